/**
 * Each p made good for all of them together, by Holm's stepwise rule: rejecting where the result is at most alpha finds anything
 * that is not there with a probability of at most alpha, however the tests hang together.
 *
 * Source: Holm, Scand. J. Stat. 6 (1979) 65.
 *
 * @throws RangeError unless every p is from 0 to 1
 * @example holm([0.01, 0.04, 0.03]) // [0.03, 0.06, 0.06]
 */
export function holm(ps: readonly number[]): number[] {
  const bad = ps.find((p) => !(p >= 0 && p <= 1));
  if (bad !== undefined) throw new RangeError(`holm requires p from 0 to 1, got ${bad}`);
  const order = ps.map((_, i) => i).toSorted((a, b) => (ps[a] as number) - (ps[b] as number));
  const made = ps.map(() => 1);
  let least = 0;
  order.forEach((index, rank) => {
    least = Math.max(least, Math.min(1, (ps.length - rank) * (ps[index] as number)));
    made[index] = least;
  });
  return made;
}
