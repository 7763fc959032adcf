import type { Item } from "./find-items.ts";
import { type Draft, isStop, type Mention, OWN_RIGHT, says } from "./mention.ts";

const REALLY = /^(?:is|was) (?:really|actually|in fact)(?: (?:a|an|just|more|more of a))?$/;
const MORE_LIKE = /^(?:, )?(?:well , |or |actually |no )?more like(?: an?)?$|^, actually$/;
const BECAME =
  /^(?:has |have )?(?:become|turned into|turns out to be|turned out to be)(?: (?:a|an|more|more of a))?$/;

export const family = ({ attributes }: Mention): string => attributes[0]?.split(".")[0] ?? "";

/** Leaves out a flavour that the next one is said to be instead: "the plum is really a prune", "plum, or more like cherry", "Plum? No. Cherry." */
export function anotherAfterAll(draft: Draft, one: Mention, next: Mention): void {
  const same = family(one) === family(next);
  const between = draft.items
    .slice(one.last + 1, next.at)
    .map(wordOf)
    .join(" ");
  if ((same || between.endsWith(" just")) && REALLY.test(between)) one.dropped = true;
  // "not fresh cherry, more like plum" is of both.
  const denied = [1, 2].some((step) => says(draft.items[one.at - step], "not") !== undefined);
  if (same && !denied && MORE_LIKE.test(between)) one.dropped = true;
  if (!OWN_RIGHT.test(next.attributes[0] ?? "") && BECAME.test(between)) one.dropped = true;
  if (!refused(draft, one, next)) return;
  if (same) one.dropped = true;
  else one.gone = true;
}

const wordOf = ({ mark, words }: Item): string => (mark === "" ? words : mark === "comma" ? "," : ".");

/** "Plum? No. Cherry.", but not where the next is asked for too. */
function refused({ items, at }: Draft, { last }: Mention, next: Mention): boolean {
  return (
    items[last + 1]?.mark === "ask" &&
    items[last + 2]?.words === "no" &&
    isStop(items[last + 3]) &&
    at[last + 4] === next &&
    items[next.last + 1]?.mark !== "ask"
  );
}
