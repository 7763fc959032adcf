/**
 * The {q, m} simplex lattice: every mixture of q parts whose shares are whole m-ths.
 *
 * Source: Scheffé 1958; Cornell, Experiments with Mixtures (from memory). Exact but for the division by m.
 *
 * @throws RangeError unless q is 2 to 8 and m 1 to 20
 * @example simplexLattice(2, 2) // [[1, 0], [0.5, 0.5], [0, 1]]
 */
export function simplexLattice(q: number, m: number): number[][] {
  checkParts(q);
  if (!(Number.isInteger(m) && m >= 1 && m <= 20))
    throw new RangeError(`a lattice requires whole steps from 1 to 20, got ${m}`);
  const whole = (parts: number, left: number): number[][] =>
    parts === 1
      ? [[left]]
      : Array.from({ length: left + 1 }, (_, i) => left - i).flatMap((first) =>
          whole(parts - 1, left - first).map((rest) => [first, ...rest]),
        );
  return whole(q, m).map((steps) => steps.map((step) => step / m));
}

/**
 * The simplex centroid design: every part alone, and the even mixture of every two, three and so on.
 *
 * Source: Scheffé 1963; Cornell (from memory).
 *
 * @throws RangeError unless q is 2 to 8
 * @example simplexCentroid(3).length // 7
 */
export function simplexCentroid(q: number): number[][] {
  checkParts(q);
  return Array.from({ length: 2 ** q - 1 }, (_, n) => n + 1)
    .map((chosen) => Array.from({ length: q }, (_, i) => (chosen >> i) % 2))
    .map((chosen) => {
      const many = chosen.reduce((sum, one) => sum + one, 0);
      return { many, shares: chosen.map((one) => one / many) };
    })
    .toSorted((a, b) => a.many - b.many)
    .map(({ shares }) => shares);
}

function checkParts(q: number): void {
  if (!(Number.isInteger(q) && q >= 2 && q <= 8))
    throw new RangeError(`a mixture requires 2 to 8 parts, got ${q}`);
}

/** Shares carried into the simplex above the lower bounds (L-pseudo-components): low + (1 − Σ low) × share. */
export function aboveLow(lows: readonly number[], shares: readonly number[]): number[] {
  const room = 1 - lows.reduce((sum, low) => sum + low, 0);
  return shares.map((share, i) => (lows[i] as number) + room * share);
}
