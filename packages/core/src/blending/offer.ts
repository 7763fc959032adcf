import { keepsRules } from "./compile-rules.ts";
import { measure } from "./measure.ts";
import type { Space } from "./space.ts";
import type { TopList } from "./top-list.ts";

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** True when no smaller whole parts make the same recipe. */
function inLowestTerms(parts: ArrayLike<number>, size: number): boolean {
  let divisor = 0;
  for (let x = 0; x < size; x += 1) divisor = commonDivisor(parts[x]!, divisor);
  return divisor === 1;
}

/** Puts a recipe into the list if it is in lowest terms, has all that is required, keeps the rules and is good enough. */
export function offer(
  space: Space,
  list: TopList,
  support: ArrayLike<number>,
  parts: ArrayLike<number>,
  size: number,
): boolean {
  if (!inLowestTerms(parts, size)) return false;
  for (const must of space.required) {
    let has = false;
    for (let x = 0; x < size; x += 1) has ||= support[x] === must;
    if (!has) return false;
  }
  if (!keepsRules(space.rules, support, parts, size)) return false;
  const places: number[] = [];
  const lines: number[] = [];
  for (let x = 0; x < size; x += 1) {
    const place = support[x]!;
    let at = x;
    for (; at > 0 && places[at - 1]! > place; at -= 1) {
      places[at] = places[at - 1]!;
      lines[at] = lines[at - 1]!;
    }
    places[at] = place;
    lines[at] = parts[x]!;
  }
  const measured = measure(space.objective, places, lines);
  if (list.takes(measured.score))
    list.add({ support: places.map((place) => space.global[place]!), parts: lines, ...measured });
  return true;
}

const ROUNDING = 1e-9;

/** Offers a recipe unless its length shows that it is too far off: the rest need not be looked at then. */
export function offerIfClose(
  space: Space,
  list: TopList,
  support: readonly number[],
  parts: readonly number[],
): void {
  const { gram, n } = space;
  const { each, goal } = space.objective;
  // Rounding in the square, which would hide recipes that hit the target exactly.
  let square = -ROUNDING * parts.length;
  let reach = 0;
  const threshold = list.threshold;
  const pad = 1e-9 * (1 + Math.abs(threshold));
  for (let x = 0; x < support.length; x += 1) {
    const i = support[x]!;
    reach += parts[x]! * each[i]! * (threshold + pad - goal[i]!);
    let along = 0;
    for (let y = 0; y < x; y += 1) along += parts[y]! * gram[i * n + support[y]!]!;
    square += parts[x]! * (parts[x]! * gram[i * n + i]! + 2 * along);
  }
  if (threshold === Infinity || (reach >= 0 && square <= reach * reach))
    offer(space, list, support, parts, parts.length);
}
