/**
 * The flattest chord of y^(1/e) from the target to anywhere between `low` and `high`, all as e-th powers: what a distance among
 * powers must be scaled by so that it is never longer than the distance among intensities. 1 when e is 1.
 *
 * The curve bends one way only, so its flattest chord is the one to an end of the range.
 */
export function flattestChord(e: number, target: number, low: number, high: number): number {
  if (e === 1) return 1;
  const end = e > 1 ? Math.max(high, target) : Math.min(low, target);
  const root = (y: number): number => y ** (1 / e);
  const slope = end === target ? target ** (1 / e - 1) / e : (root(end) - root(target)) / (end - target);
  // A target of 0 has an upright tangent for e > 1, and then nothing on the shelf is above 0: any scale will do.
  return Number.isFinite(slope) ? slope * (1 - 1e-9) : 1;
}
