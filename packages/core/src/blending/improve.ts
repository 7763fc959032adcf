import { offer } from "./offer.ts";
import type { Space } from "./space.ts";
import type { TopList } from "./top-list.ts";

/**
 * Betters a recipe by the best exchange of one line (another whiskey, other parts, out, or one line more) until none helps, and
 * offers every recipe it meets that could make the list. Proves nothing: it makes the list's threshold low before the proof begins.
 */
export function improve(
  space: Space,
  list: TopList,
  from: readonly number[],
  with_: readonly number[],
): void {
  const { n, gram, maxBottles, maxParts } = space;
  const { each, goal } = space.objective;
  const support = [...from];
  const parts = [...with_];
  const along = new Float64Array(n);
  let kept = offer(space, list, support, parts, support.length);
  for (let round = 0; round < 60; round += 1) {
    along.fill(0);
    for (const [x, i] of support.entries())
      for (let l = 0, at = i * n; l < n; l += 1, at += 1) along[l]! += parts[x]! * gram[at]!;
    let square = 0;
    let weight = 0;
    let goals = 0;
    let total = 0;
    for (const [x, i] of support.entries()) {
      square += parts[x]! * along[i]!;
      weight += parts[x]! * each[i]!;
      goals += parts[x]! * each[i]! * goal[i]!;
      total += parts[x]!;
    }
    let best = kept ? (Math.sqrt(Math.max(0, square)) + goals) / weight - 1e-12 : Infinity;
    // The length that exchanges go by says little of an absolute distance: only what betters it is measured.
    // While the list is short, what is little worse will do to fill it.
    const near = best + 0.2 * Math.abs(best);
    let threshold = space.objective.absolute ? -Infinity : Math.min(near, list.threshold);
    let change: { slot: number; to: number; parts: number } | null = null;
    const slots = support.length < maxBottles ? support.length + 1 : support.length;
    for (let slot = 0; slot < slots; slot += 1) {
      const i = support[slot] ?? -1;
      const own = i < 0 ? 0 : parts[slot]!;
      const rest = total - own;
      const square0 = i < 0 ? square : square - 2 * own * along[i]! + own * own * gram[i * n + i]!;
      const weight0 = i < 0 ? weight : weight - own * each[i]!;
      const goals0 = i < 0 ? goals : goals - own * each[i]! * goal[i]!;
      for (let j = 0; j < n; j += 1) {
        if (j !== i && support.includes(j)) continue;
        const cross = i < 0 ? along[j]! : along[j]! - own * gram[i * n + j]!;
        const self = gram[j * n + j]!;
        const limit = Math.max(best, threshold);
        if (rest > 0 && limit < Infinity) {
          // However many parts: no nearer than the line from what stays to this one comes.
          const add = each[j]!;
          const stay = square0 / (weight0 * weight0);
          const both = cross / (weight0 * add);
          const chord = stay - 2 * both + self / (add * add);
          const share = chord > 0 ? Math.min(1, Math.max(0, (stay - both) / chord)) : 0;
          const room = limit - Math.min(goals0 / weight0, goal[j]!);
          if (room <= 0 || stay - share * (2 * (stay - both) - share * chord) >= room * room) continue;
        }
        for (let m = j === i && rest > 0 ? 0 : 1; m <= maxParts - rest; m += 1) {
          const square1 = square0 + m * (2 * cross + m * self);
          const weight1 = weight0 + m * each[j]!;
          const goals1 = goals0 + m * each[j]! * goal[j]!;
          // Most exchanges are far off: their squares show it, and no root is taken.
          const room = Math.max(best, threshold) * weight1 - goals1;
          if (room <= 0 || square1 >= room * room) continue;
          const score = (Math.sqrt(Math.max(0, square1)) + goals1) / weight1;
          if (score >= best && score >= threshold) continue;
          const places: number[] = [];
          const counts: number[] = [];
          for (let x = 0; x < support.length; x += 1) {
            if (x === slot && m === 0) continue;
            places.push(x === slot ? j : support[x]!);
            counts.push(x === slot ? m : parts[x]!);
          }
          if (i < 0) {
            places.push(j);
            counts.push(m);
          }
          const taken = offer(space, list, places, counts, places.length);
          if (!space.objective.absolute) threshold = Math.min(near, list.threshold);
          if (taken && score < best) {
            best = score;
            change = { slot, to: j, parts: m };
          }
        }
      }
    }
    if (change === null) return;
    kept = true;
    support[change.slot] = change.to;
    parts[change.slot] = change.parts;
    if (change.parts === 0) {
      support.splice(change.slot, 1);
      parts.splice(change.slot, 1);
    }
  }
}
