import { keepsRules } from "./compile-rules.ts";
import { measure } from "./measure.ts";
import type { Space } from "./space.ts";
import type { TopList } from "./top-list.ts";

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** True when no smaller whole parts make the same recipe. */
export function inLowestTerms(parts: ArrayLike<number>, size: number): boolean {
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
  const order = Array.from({ length: size }, (_, x) => x).toSorted((a, b) => support[a]! - support[b]!);
  const places = order.map((x) => support[x]!);
  const lines = order.map((x) => parts[x]!);
  const { score, distance } = measure(space.objective, places, lines);
  list.add({ support: places, parts: lines, score, distance });
  return true;
}
