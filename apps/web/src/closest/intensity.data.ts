/**
 * By about how much a noted intensity of 0 to 10 may be off, one standard deviation: one taster, one evening. Common practice, no
 * source; said beside every figure that rests on it.
 */
export const INTENSITY_SD = 1;
