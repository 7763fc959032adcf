/**
 * Probability of at least `least` successes in trials that are independent, each with a chance of its own.
 *
 * Domain: chances 0 to 1, `least` whole; none or fewer is 1, more than there are trials 0. Method: the law built up trial by trial, every term
 * a sum of products that are not negative, so nothing cancels; error below 1e-14 times the number of trials, relative.
 * Source: the Poisson binomial law, Johnson, Kemp & Kotz, Univariate Discrete Distributions (2005); the place in it from memory: 3.12.2.
 *
 * @throws RangeError for a chance outside 0 to 1
 * @example poissonBinomialTail([1 / 3, 1 / 4], 2) // 1/12
 */
export function poissonBinomialTail(chances: readonly number[], least: number): number {
  let law = [1];
  for (const p of chances) {
    if (!(p >= 0 && p <= 1)) throw new RangeError(`a chance requires 0 to 1, got ${p}`);
    const before = law;
    law = Array.from(
      { length: before.length + 1 },
      (_, k) => (before[k] ?? 0) * (1 - p) + (before[k - 1] ?? 0) * p,
    );
  }
  return Math.min(
    1,
    law.slice(Math.max(0, least)).reduce((sum, term) => sum + term, 0),
  );
}
