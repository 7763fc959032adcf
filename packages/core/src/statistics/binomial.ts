/**
 * How many ways there are to choose k of n things, exactly.
 *
 * @param n whole number, 0 or more
 * @param k whole number; outside 0..n there is no way, so the answer is 0
 * @throws RangeError when n is negative or either is not whole
 * @example binomial(5, 2) // 10n
 */
export function binomial(n: number, k: number): bigint {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`binomial requires a whole n >= 0, got ${n}`);
  if (!Number.isInteger(k)) throw new RangeError(`binomial requires a whole k, got ${k}`);
  if (k < 0 || k > n) return 0n;
  let ways = 1n;
  // Each partial product is itself a binomial coefficient, so the division is exact.
  for (let i = 1; i <= Math.min(k, n - k); i += 1) ways = (ways * BigInt(n - i + 1)) / BigInt(i);
  return ways;
}
