/**
 * The intensity of a mix by a power law: (sum of share × intensity^e)^(1/e). 1 is the plain mean; above it strong parts count more than
 * their share; Infinity takes the strongest part that has a share.
 *
 * @param exponent above 0; Infinity for the strongest
 * @param shares 0 or more, that add up to 1
 * @param intensities 0 or more, one a share
 * @returns from the weakest to the strongest intensity
 * @example mixedBy(2, [0.75, 0.25], [0, 8]) // 4
 */
export function mixedBy(exponent: number, shares: readonly number[], intensities: readonly number[]): number {
  let mixed = 0;
  for (const [i, share] of shares.entries()) {
    const intensity = intensities[i]!;
    if (exponent === Infinity) mixed = Math.max(mixed, share > 0 ? intensity : 0);
    else mixed += share * (exponent === 1 ? intensity : intensity ** exponent);
  }
  return exponent === 1 || exponent === Infinity ? mixed : mixed ** (1 / exponent);
}
