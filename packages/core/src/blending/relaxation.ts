/** The least length of a mean of the shelf with any shares at all, no rules. */
export type Relaxation = {
  /** Proven: no mean is shorter than this. */
  readonly bound: number;
  /** Scalar product of each whiskey's offset with the short mean that was found, and that mean's length. */
  readonly along: Float64Array;
  readonly length: number;
};

const STEPS = 500;

/**
 * Least squares over the simplex by moving share from the worst whiskey in use to the best on the shelf (pairwise Frank-Wolfe;
 * Lacoste-Julien and Jaggi, NIPS 2015). Stops near the optimum: the bound holds wherever it stops, because for a mean v of offsets
 * u every other mean is at least min(u.v) / |v| long.
 *
 * @param gram scalar products of n offsets, row by row; each row and column is divided by `each`
 */
export function relaxation(gram: Float64Array, each: Float64Array, n: number): Relaxation {
  const share = new Float64Array(n);
  const along = new Float64Array(n);
  const g = (i: number, j: number): number => gram[i * n + j]! / (each[i]! * each[j]!);
  let start = 0;
  for (let i = 1; i < n; i += 1) if (g(i, i) < g(start, start)) start = i;
  if (n > 0) share[start] = 1;
  for (let i = 0; i < n; i += 1) along[i] = g(start, i);
  for (let step = 0; step < STEPS; step += 1) {
    let best = 0;
    let worst = -1;
    for (let i = 0; i < n; i += 1) {
      if (along[i]! < along[best]!) best = i;
      if (share[i]! > 0 && (worst < 0 || along[i]! > along[worst]!)) worst = i;
    }
    const gain = n === 0 ? 0 : along[worst]! - along[best]!;
    if (!(gain > 1e-7 * (1 + Math.abs(along[best]!)))) break;
    const curve = g(best, best) + g(worst, worst) - 2 * g(best, worst);
    const moved = Math.min(share[worst]!, curve > 0 ? gain / curve : 1);
    share[best]! += moved;
    share[worst] = moved === share[worst] ? 0 : share[worst]! - moved;
    for (let i = 0; i < n; i += 1) along[i]! += moved * (g(best, i) - g(worst, i));
  }
  let square = 0;
  let least = Infinity;
  for (let i = 0; i < n; i += 1) {
    square += share[i]! * along[i]!;
    least = Math.min(least, along[i]!);
  }
  const length = Math.sqrt(Math.max(0, square));
  return { bound: length > 1e-9 ? Math.max(0, least / length - 1e-9) : 0, along, length };
}
