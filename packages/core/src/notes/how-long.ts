import type { Item } from "./find-items.ts";
import type { Stance } from "./language.ts";
import { type Draft, is, isStop, says } from "./mention.ts";

/** "the other had a longer finish": here it is shorter. */
export function stanceAt({ items, elsewhere }: Draft, n: number, stance: Stance | undefined): Stance {
  if (stance === undefined) return "present";
  const turned = [n - 1, n - 2, n - 3].some((m) => elsewhere.has(m) && !isStop(items[m]));
  return turned && stance !== "absent" ? (stance === "more" ? "less" : "more") : stance;
}

/** "much longer" */
export const much = (items: readonly Item[], n: number, stance: Stance): boolean =>
  stance === "more" && is(items[n - 1], "muchMore");

/** "not long", "not a very long finish", "not particularly long" */
function denied(items: readonly Item[], n: number): boolean {
  for (let m = n - 1; m >= n - 3; m--) {
    if (says(items[m], "not") || says(items[m], "less")) return true;
    if (!says(items[m], "degree") && !is(items[m], "articles")) return false;
  }
  return false;
}

export function graded(items: readonly Item[], n: number, strength: number): number {
  const before = items[n - 1];
  if (denied(items, n)) return strength > 5 ? 2.5 : 5;
  const degree = says(before, "degree");
  if (degree?.strength === undefined) return strength;
  if (says(before, "amplify"))
    return strength > 5 ? Math.min(10, strength + 0.8) : Math.max(0.5, strength - 0.7);
  if (is(before, "plainly")) return strength;
  if (degree.strength > 4 && degree.strength < 6 && strength > 7) return 6;
  if (degree.strength < 4 && strength > 6) return 6;
  return strength;
}
