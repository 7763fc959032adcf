/**
 * The yardstick: every recipe in lowest terms by nested loops, sums of the profiles carried along, nothing skipped. Gives the best
 * distance and how many recipes there were.
 */
export function bestOfAll(
  shelf: readonly (readonly number[])[],
  target: readonly number[],
  maxBottles: number,
  maxParts: number,
): { readonly distance: number; readonly recipes: number } {
  const d = target.length;
  const offsets = shelf.map((row) =>
    Float64Array.from(row, (value, a) => (value - (target[a] ?? 0)) / Math.sqrt(d)),
  );
  const sums = Array.from({ length: maxBottles + 1 }, () => new Float64Array(d));
  let best = Infinity;
  let recipes = 0;
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  const next = (bottles: number, from: number, parts: number, common: number): void => {
    const sum = sums[bottles] as Float64Array;
    const below = sums[bottles + 1] as Float64Array;
    for (let i = from; i < offsets.length; i += 1) {
      const offset = offsets[i] as Float64Array;
      for (let own = 1; parts + own <= maxParts; own += 1) {
        let square = 0;
        for (let a = 0; a < d; a += 1) {
          const value = (sum[a] as number) + own * (offset[a] as number);
          below[a] = value;
          square += value * value;
        }
        const shared = divisor(own, common);
        if (shared === 1) {
          recipes += 1;
          best = Math.min(best, square / (parts + own) ** 2);
        }
        if (bottles + 1 < maxBottles) next(bottles + 1, i + 1, parts + own, shared);
      }
    }
  };
  next(0, 0, 0, 0);
  return { distance: Math.sqrt(best), recipes };
}
