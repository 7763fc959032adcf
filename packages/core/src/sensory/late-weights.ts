/** A glass as far as its turn is concerned. */
export interface Burden {
  /** % vol at 20 °C, as poured. */
  readonly abv20: number;
  /** 0 (none) to 1 (very smoky), null when unknown. */
  readonly smoke: number | null;
}

/**
 * How much each glass should come late, 0 to 2: its strength and its smoke, each as a share of the range within the flight.
 * That the strongest and smokiest tire the palate most is common practice, no source.
 *
 * @throws RangeError when a strength is outside 0 to 100 % vol or smoke outside 0 to 1
 * @example lateWeights([{ abv20: 40, smoke: 0 }, { abv20: 60, smoke: null }]) // [0, 1]
 */
export function lateWeights(glasses: readonly Burden[]): number[] {
  for (const { abv20, smoke } of glasses) {
    if (!(abv20 >= 0 && abv20 <= 100)) {
      throw new RangeError(`a strength requires 0 to 100 % vol, got ${abv20} % vol`);
    }
    if (smoke !== null && !(smoke >= 0 && smoke <= 1))
      throw new RangeError(`smoke requires 0 to 1, got ${smoke}`);
  }
  const strengths = glasses.map(({ abv20 }) => abv20);
  const low = Math.min(...strengths);
  const range = Math.max(...strengths) - low;
  return glasses.map(({ abv20, smoke }) => (range === 0 ? 0 : (abv20 - low) / range) + (smoke ?? 0));
}
