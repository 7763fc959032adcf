import type { Item } from "./find-items.ts";
import type { Where } from "./language.ts";
import { adjectivesBefore } from "./adjectives-before.ts";
import { lastPart, listBefore } from "./list-before.ts";
import { type Draft, is, isStop, type Mention, type SaidSense, says } from "./mention.ts";
import { sectionCue } from "./section-cue.ts";
import { followed, standsAfter, summedUp } from "./stands-after.ts";

/** A list of flavours with one cue behind it is no longer. */
const LONGEST_LIST = 12;

/** Which part of the tasting each item is in, and each flavour: by the last cue, or by one that stands after it ("oak on the palate"). */
export function findSections(draft: Draft, given: Where): readonly Where[] {
  const { items } = draft;
  const sections: Where[] = [];
  let here = given;
  let said: readonly [number, number] = [0, 0];
  let before: Carried = { loose: [], where: given };
  for (let from = 0; from < items.length; ) {
    let to = from;
    while (to < items.length && !isStop(items[to])) to++;
    const told = sentence(draft, from, to, here, sections, before.loose);
    here = told.where;
    if (to > from) before = told;
    if (to > from) said = [from, to];
    if (items[to]?.mark === "blank" && !headsOnly(draft, ...said)) here = given;
    sections[to] = here;
    from = to + 1;
  }
  return sections;
}

/** "hay (nose), honey (palate)", "Hay, nose." */
const bracketed = ({ items, at }: Draft, n: number): boolean =>
  says(items[n], "where")?.form === "head" &&
  items[n - 1]?.mark === "comma" &&
  at[n - 2] !== undefined &&
  (items[n + 1]?.mark ?? "stop") !== "";

/** "oily mouthfeel", "hot nose": the part that a flavour's own words name. */
function named({ items, lexicon }: Draft, { at }: Mention): Where | undefined {
  const words = items[at]?.words.split(" ") ?? [];
  if (words.length < 2) return undefined;
  for (const word of words) {
    const where = lexicon.root.next.get(word)?.phrase?.by.where as SaidSense | undefined;
    if (where?.form === "head" || where?.form === "stays" || word === "smells") return where?.where;
  }
  return undefined;
}

const likeA = (items: readonly Item[], n: number): boolean =>
  /\bsmells?\b/.test(items[n]?.words ?? "") &&
  [n - 1, n - 2].some((m) => /(?:^| )like(?: the| a)?$/.test(items[m]?.words ?? ""));

const aTaste = (items: readonly Item[], n: number): boolean =>
  [n - 1, n - 2].some((m) => /^(?:a|an|some|this)$/.test(items[m]?.words ?? ""));

const headsOnly = ({ items, at }: Draft, from: number, to: number): boolean =>
  items.slice(from, to).every((_, n) => at[from + n] === undefined) && to - from < 4;

/** Where a sentence ends, and what it says before any cue. */
interface Carried {
  readonly loose: readonly Mention[];
  readonly where: Where;
}

function sentence(
  draft: Draft,
  from: number,
  to: number,
  carried: Where,
  sections: Where[],
  before: readonly Mention[],
): Carried {
  const { items, at } = draft;
  let here = carried;
  let style: "forward" | "back" | null = null;
  let headed: SaidSense["form"];
  let pending: Mention[] = [];
  let loose: Mention[] = [];
  let taken: readonly Mention[] = [];
  let takenAt = -1;
  for (let n = from; n < to; n++) {
    const item = items[n] as Item;
    sections[n] = here;
    const mention = at[n];
    if (mention) {
      if (mention.at !== n) continue;
      const own = named(draft, mention);
      // "leaves dry the mouth" is the finish's still.
      if (own !== undefined && !(own === "palate" && here === "finish")) {
        here = own;
        style ??= "forward";
        pending = [];
      }
      mention.where = here;
      if (own === undefined) pending.push(mention);
      continue;
    }
    if (item.mark === "comma" || (says(item, "break") && !item.words.startsWith("than "))) {
      loose = [...loose, ...pending].slice(-LONGEST_LIST);
      pending = [];
      continue;
    }
    const cue = sectionCue(draft, n);
    if (cue?.where === undefined || draft.elsewhere.has(n)) continue;
    // "Palate: chocolate, a whiff of flint"
    if (/(?:^| )(?:whiffs?|waft) of$/.test(item.words) && (here === "palate" || here === "finish")) continue;
    const where = cue.where;
    // "a coffee taste at the end"; "the end has a taste of coffee"
    if (cue.form === "head" && at[n - 1] !== undefined && sectionCue(draft, n + 1)?.form === "after")
      continue;
    if (here === "finish" && style === "forward" && is(item, "tasteOf")) continue;
    // "the aftertaste is like the smell of a struck match"
    if (style === "forward" && cue.where === "nose" && here === "finish" && likeA(items, n)) continue;
    // "at the end rests a taste from coffee", "after the swallow a nutty taste"
    if (here === "finish" && item.text === "taste" && style === "forward" && aTaste(items, n)) continue;
    const adjectives = cue.form === "head" ? adjectivesBefore(draft, n) : [];
    if (adjectives.length > 0) {
      for (const one of adjectives) one.where = where;
      pending = pending.filter((one) => !adjectives.includes(one));
    }
    // "almond, on the tail"
    if (
      pending.length === 0 &&
      cue.form === "after" &&
      /^(?:on|at|in) /.test(item.words) &&
      items[n - 1]?.mark === "comma" &&
      !followed(draft, n, to)
    ) {
      const one = loose.at(-1);
      if (one) pending = loose.filter((other) => other === one);
    }
    // "a sweet one, all in all"
    if (where === "whole" && pending.length === 0 && !followed(draft, n, to)) pending = loose;
    // "A stable in July. That's the nose."
    if (
      style === null &&
      pending.length === 0 &&
      loose.length === 0 &&
      summedUp(draft, n) &&
      !followed(draft, n, to)
    )
      for (const one of before) one.where = where;
    // "salt on the lips after"
    if (pending.length === 0 && takenAt === n - 1 && cue.form === "after" && !followed(draft, n, to))
      for (const one of taken) one.where = where;
    if (style !== "forward" && pending.length === 0 && bracketed(draft, n))
      [pending, loose] = [loose.slice(-1), loose.slice(0, -1)];
    if (
      standsAfter(
        draft,
        n,
        to,
        cue,
        pending,
        style === "back" && cue.form === headed && headed === "head" ? "named" : style,
      )
    ) {
      const part = lastPart(draft, pending, n, style === "forward");
      // "oily, sweet after": the last alone.
      const all =
        says(item, "where")?.form === "bare"
          ? pending.slice(-1)
          : summedUp(draft, n)
            ? [...loose, ...pending]
            : style === null && part.length === pending.length
              ? [...listBefore(draft, loose, part), ...part]
              : part;
      for (const one of all) one.where = where;
      [taken, takenAt] = [all, n];
      style = "back";
    } else style ??= "forward";
    here = where;
    headed = cue.form;
    sections[n] = here;
    pending = [];
    loose = [];
  }
  return { where: here, loose: style === null ? [...loose, ...pending] : [] };
}
