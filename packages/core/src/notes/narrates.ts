import type { Item } from "./find-items.ts";
import { type Draft, is, isPlain, isStop, says } from "./mention.ts";
import { recalled } from "./recalled.ts";

const HIS = /^(?:my|his|her|our|their|your)$/;

/** "we sat by the fire", "my uncle kept bees": what somebody did, but not what the glass is likened to. */
export function narrates(draft: Draft, n: number): boolean {
  const { items, lexicon } = draft;
  const had = items[n]?.words === "had";
  // "burned the" is an idiom of its own.
  const verb = items[n]?.words ?? "";
  // "I kept getting raspberry"
  if (
    verb === "kept" &&
    /^(?:coming|finding|getting|noticing|smelling|tasting)\b/.test(items[n + 1]?.words ?? "")
  )
    return false;
  const told = lexicon.told.has(says(items[n], "idiom") ? (verb.split(" ")[0] ?? "") : verb);
  const past =
    isPlain(items[n] as Item) &&
    /[a-z]{2}ed$/.test(verb) &&
    !lexicon.flavourWords.has(verb) &&
    draft.at[n] === undefined;
  if (!had && !told && !past) return false;
  let m = n - 1;
  while (m >= 0 && is(items[m], "storyBetween")) m--;
  const who = items[m];
  if (who === undefined || who.mark !== "") return false;
  const named = who.capital && isPlain(who) && !lexicon.known.has(who.words);
  const inLaw = who.words === "law" && items[m - 1]?.words === "in";
  const before = items[inLaw ? m - 3 : m - 1]?.words ?? "";
  const related = isPlain(who) && (HIS.test(before) || (before === "the" && !is(items[n], "thingsDo")));
  const anybody = /^(?:some|every)(?:body|one)$/.test(who.words) && is(items[n], "broughtBy");
  if (!is(who, "storyTellers") && !named && !related && !anybody) return false;
  if (past && !told && !had && !named && !/^(?:he|she|they|we)(?:'d)?$/.test(who.words) && !HIS.test(before))
    return false;
  if (had && ((who.words === "i" && !ago(items, n)) || isPraised(draft, n))) return false;
  for (let at = m - 1; at >= 0 && at > m - 16 && !isStop(items[at]); at--)
    if (says(items[at], "memory") || LIKENED.test(items[at]?.words ?? "")) return false;
  return !recalled(items, n);
}

const LIKENED = /\blike\b|^as (?:if|though)\b|\bthought\b/;

/** "I had a coffee an hour ago" */
function ago(items: readonly Item[], from: number): boolean {
  for (let n = from + 1; n < items.length && items[n]?.mark === ""; n++)
    if (/(?:^| )(?:ago|earlier|beforehand)$/.test(items[n]?.words ?? "")) return true;
  return false;
}

/** "we had a hint of smoke", "they had plum on the nose": of the glass after all. */
function isPraised({ items, at }: Draft, n: number): boolean {
  let seen = false;
  for (let m = n + 1; m < items.length && m < n + 12 && !isStop(items[m]); m++) {
    seen ||= at[m] !== undefined;
    if (says(items[m], "where")) return true;
    // "I've had far too much cheese"
    if (/\btoo (?:much|many)$/.test(items[m]?.words ?? "")) return false;
    if (!seen && ["degree", "liking", "unsure", "more"].some((kind) => says(items[m], kind as "more")))
      return true;
  }
  return false;
}
