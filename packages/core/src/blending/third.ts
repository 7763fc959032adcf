const ROUNDING = 1e-7;

/**
 * How much the whiskeys after the third can take off: with `m` more of them, no cosine below `floor` (negative), the least that m
 * weights t add to those of the first three, Y in sum, is -share Y². Infinite when nothing bounds it.
 */
export function shareOfOthers(floor: number, m: number): number {
  const spread = 1 + (m - 1) * floor;
  return m === 0 ? 0 : spread > 0 ? (m * floor * floor) / spread : Infinity;
}

/**
 * Whether three whiskeys with these cosines and others that take `share` off can together point nowhere: false is certain. It is
 * the test for copositive 3 x 3 matrices (Hadeler, Linear Algebra Appl. 49 (1983) 79) on their cosines less the share.
 */
export function canVanish(ab: number, ac: number, bc: number, share: number): boolean {
  const left = 1 - share;
  if (!(left > 1e-3)) return true;
  const a = (ab - share) / left;
  const b = (ac - share) / left;
  const c = (bc - share) / left;
  if (Math.min(a, b, c) <= ROUNDING - 1) return true;
  return 1 + a + b + c + Math.sqrt(2 * (1 + a) * (1 + b) * (1 + c)) <= ROUNDING;
}
