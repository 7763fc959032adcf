import { offer } from "./offer.ts";
import type { Walk } from "./walk.ts";

/**
 * Offers every recipe of exactly these whiskeys that its absolute distance does not rule out. The sums of the lines so far are
 * carried along, so that one more way to give out parts costs one pass over the attributes.
 */
export function absoluteFill(walk: Walk, support: readonly number[]): void {
  const { space, list, threshold } = walk;
  const { offsets, each, goal, weight } = space.objective;
  const d = weight.length;
  const size = support.length;
  const sums = Array.from({ length: size + 1 }, () => new Float64Array(d));
  const parts: number[] = [];
  const next = (line: number, given: number, all: number, goals: number): void => {
    const before = sums[line]!;
    const after = sums[line + 1]!;
    const at = support[line]! * d;
    const amount = each[support[line]!]!;
    const others = size - line - 1;
    after.set(before);
    for (let own = 1; given + own + others <= space.maxParts; own += 1) {
      let length = 0;
      for (let a = 0; a < d; a += 1) {
        const sum = after[a]! + amount * offsets[at + a]!;
        after[a] = sum;
        length += Math.abs(sum);
      }
      parts[line] = own;
      const reached = all + own * amount;
      const added = goals + own * amount * goal[support[line]!]!;
      if (others > 0) next(line + 1, given + own, reached, added);
      else {
        walk.nodes += 1;
        if (length + added <= threshold() * reached) offer(space, list, support, parts, size);
      }
    }
  };
  if (size <= space.maxParts) next(0, 0, 0, 0);
}
