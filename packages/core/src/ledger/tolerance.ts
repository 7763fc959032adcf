/**
 * How far, relative to the bound, an asked volume or mass may miss it and still count as meeting it. A vessel
 * said to hold 750 mL and filled by masses worked out for 750 mL comes to 750.0000000001 mL: that is
 * arithmetic, not an overflow. 1e-6 is 0.75 µL in a bottle, far below what any pour or scale can tell.
 */
export const TOLERANCE = 1e-6;
