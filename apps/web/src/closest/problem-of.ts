import type { Problem } from "@partsproof/core/blending";
import { type Aim, targetOf } from "./aim.ts";
import type { ReadRules } from "./read-rules.ts";
import type { Rules } from "./rules.ts";
import type { Shelf } from "./shelf-of.ts";

/** Strengths this near, % vol, are one: labels carry tenths. */
const SAME = 0.51;

/** The strength all of them were tasted at; null where they differ or nobody said. */
export function tastedTogetherAt(shelf: Pick<Shelf, "tastes">, ids: readonly string[]): number | null {
  const strengths = ids.map((id) => shelf.tastes.get(id)?.tastedAt ?? null);
  const [first = null] = strengths;
  if (first === null) return null;
  return strengths.every((one) => one !== null && Math.abs(one - first) < SAME) ? first : null;
}

/** What is sought within the rules, for core; null while nothing counts. */
export function problemOf(
  shelf: Pick<Shelf, "whiskeys" | "tastes" | "attributes">,
  aim: Aim,
  rules: Pick<Rules, "maxBottles" | "maxParts" | "wary">,
  read: ReadRules,
): Problem | null {
  const target = targetOf(aim, shelf.attributes);
  if (target === null) return null;
  const ids = shelf.whiskeys.map(({ id }) => id);
  return {
    whiskeys: shelf.whiskeys,
    target,
    maxBottles: rules.maxBottles,
    maxParts: rules.maxParts,
    rules: read.rules,
    goals: read.goals,
    distance: rules.wary ? "expected" : "root mean square",
    // Tasted at one strength, profiles mix by the alcohol each brings to that strength; else by what is poured.
    shares: tastedTogetherAt(shelf, ids) === null ? "volume" : "alcohol",
  };
}
