/**
 * n! exactly.
 *
 * @param n whole number, 0 or more
 * @returns the product 1·2·…·n; 1 for n = 0
 * @throws RangeError when n is negative or not whole
 * @example factorial(5) // 120n
 */
export function factorial(n: number): bigint {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`factorial requires a whole n >= 0, got ${n}`);
  let product = 1n;
  for (let i = 2; i <= n; i += 1) product *= BigInt(i);
  return product;
}
