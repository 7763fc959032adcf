import type { Problem, Target } from "@partsproof/core/blending";
import type { LearnedMixing } from "@partsproof/house/protocol";
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

/** The attributes of a target that do not mix by the mean, unless all is taken by it; what counts the unknown knows the mean alone. */
export const lawsUsed = (
  laws: readonly LearnedMixing[],
  { profile }: Pick<Target, "profile">,
  { wary, byMean }: Pick<Rules, "wary" | "byMean">,
): readonly LearnedMixing[] =>
  wary || byMean ? [] : laws.filter(({ attribute }) => profile[attribute] !== undefined);

/** What is sought within the rules, for core; null while nothing counts. */
export function problemOf(
  shelf: Pick<Shelf, "whiskeys" | "tastes" | "attributes"> & Partial<Pick<Shelf, "laws">>,
  aim: Aim,
  rules: Pick<Rules, "maxBottles" | "maxParts" | "wary" | "byMean">,
  read: ReadRules,
): Problem | null {
  const plain = targetOf(aim, shelf.attributes);
  if (plain === null) return null;
  const used = lawsUsed(shelf.laws ?? [], plain, rules);
  const target =
    used.length === 0
      ? plain
      : {
          ...plain,
          exponents: Object.fromEntries(
            used.map(({ attribute, exponent }) => [
              attribute,
              exponent === "strongest" ? Infinity : exponent,
            ]),
          ),
        };
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
