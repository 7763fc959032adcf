import type { Item } from "./find-items.ts";
import type { Where } from "./language.ts";
import { type Draft, isStop, type Mention, type SaidSense, says } from "./mention.ts";

/** A list of flavours with one cue behind it is no longer. */
const LONGEST_LIST = 12;

/** Which part of the tasting each item is in, and each flavour: by the last cue, or by one that stands after it ("oak on the palate"). */
export function findSections(draft: Draft, given: Where): readonly Where[] {
  const { items } = draft;
  const sections: Where[] = [];
  let here = given;
  let said: readonly [number, number] = [0, 0];
  for (let from = 0; from < items.length; ) {
    let to = from;
    while (to < items.length && !isStop(items[to])) to++;
    here = sentence(draft, from, to, here, sections);
    if (to > from) said = [from, to];
    if (items[to]?.mark === "blank" && !headsOnly(draft, ...said)) here = given;
    sections[to] = here;
    from = to + 1;
  }
  return sections;
}

const headsOnly = ({ items, at }: Draft, from: number, to: number): boolean =>
  items.slice(from, to).every((_, n) => at[from + n] === undefined) && to - from < 4;

const beside = (before: Draft["items"][number] | undefined): boolean =>
  before === undefined ||
  before.mark !== "" ||
  says(before, "join") !== undefined ||
  says(before, "link") !== undefined ||
  /^(?:it|which|that|what)\b/.test(before.words);

function cueAt({ items, at }: Draft, n: number): SaidSense | undefined {
  const cue = says(items[n], "where");
  const [before, next] = [items[n - 1], items[n + 1]];
  // "N: lemon", "N lemon", where a sentence or a part of it begins.
  if (cue?.form === "heading") {
    const begins = before === undefined || before.mark !== "" || at[n - 1] !== undefined;
    if (next?.mark === "colon") return cue;
    const letter = (items[n]?.words.length ?? 0) <= 3;
    return begins &&
      letter &&
      (next?.mark === "comma" ||
        next?.mark === "stop" ||
        at[n + 1] !== undefined ||
        says(next, "degree") ||
        says(next, "length"))
      ? cue
      : undefined;
  }
  // "after": what comes after, not "after the rye".
  if (cue?.form === "bare") {
    const said =
      next === undefined ||
      next.mark !== "" ||
      at[n + 1] ||
      (says(next, "degree") && next.words !== "some") ||
      (says(next, "link") && !says(next, "glue")) ||
      says(next, "start") ||
      says(next, "unsure");
    const begins =
      before === undefined || before.mark !== "" || says(before, "join") || says(before, "break");
    return said && begins ? cue : undefined;
  }
  // "we stayed late" is no finish.
  if (cue?.form === "stays") return at[n - 1] || beside(before) ? cue : undefined;
  // "knows" for "nose", where nobody knows.
  if (cue?.form === "heard")
    return before === undefined ||
      before.mark !== "" ||
      says(before, "join") ||
      says(before, "glue") ||
      says(before, "degree")
      ? cue
      : undefined;
  return cue;
}

function sentence(draft: Draft, from: number, to: number, carried: Where, sections: Where[]): Where {
  const { items, at } = draft;
  let here = carried;
  let style: "forward" | "back" | null = null;
  let pending: Mention[] = [];
  let loose: Mention[] = [];
  for (let n = from; n < to; n++) {
    const item = items[n] as Item;
    sections[n] = here;
    const mention = at[n];
    if (mention) {
      if (mention.at !== n) continue;
      mention.where = here;
      pending.push(mention);
      continue;
    }
    if (item.mark === "comma" || says(item, "break")) {
      loose = [...loose, ...pending].slice(-LONGEST_LIST);
      pending = [];
      continue;
    }
    const cue = cueAt(draft, n);
    if (cue?.where === undefined) continue;
    const where = cue.where;
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
    if (standsAfter(draft, n, to, cue, pending, style)) {
      const part = lastPart(draft, pending, n, style === "forward");
      const all =
        style === null && part.length === pending.length
          ? [...listBefore(draft, loose, part), ...part]
          : part;
      for (const one of all) one.where = where;
      style = "back";
    } else style ??= "forward";
    here = where;
    sections[n] = here;
    pending = [];
    loose = [];
  }
  return here;
}

/** Whether a cue is of what stands before it. */
function standsAfter(
  draft: Draft,
  n: number,
  to: number,
  cue: SaidSense,
  pending: readonly Mention[],
  style: "forward" | "back" | null,
): boolean {
  const last = pending.at(-1);
  if (last === undefined || cue.form === "verb" || cue.form === "heading" || cue.form === "bare")
    return false;
  if (cue.form === "stays") return true;
  const before = draft.items[n - 1];
  // "and then on the palate, oak"
  if (
    says(before, "join") ||
    says(before, "break") ||
    (before !== undefined && says(before, "start") && cue.form === "after")
  )
    return false;
  const near = close(draft, last, n, cue.form);
  if (!followed(draft, n, to)) {
    if (cue.form === "after") return true;
    return style === "forward" ? near && ends(draft, n) : near || (ends(draft, n) && !apart(draft, last, n));
  }
  if (style === "forward" || !near) return false;
  return cue.form === "after" || (!says(draft.items[n + 1], "link") && draft.items[n + 1]?.mark !== "colon");
}

/** "sweeter than the last one with a longer finish": what stands before the cue is not of it. */
const apart = ({ items }: Draft, { last }: Mention, n: number): boolean => {
  for (let m = last + 1; m < n; m++)
    if (
      says(items[m], "join") ||
      says(items[m], "than") ||
      says(items[m], "length") ||
      says(items[m], "other") ||
      says(items[m], "start")
    )
      return true;
  return false;
};

const ends = ({ items }: Draft, n: number): boolean =>
  items[n + 1] === undefined || items[n + 1]?.mark !== "";

/** A flavour after the cue, before a mark or another cue. */
function followed({ items, at }: Draft, n: number, to: number): boolean {
  for (let m = n + 1; m < to; m++) {
    if (at[m]) return true;
    const item = items[m];
    if (item === undefined || item.mark === "comma" || says(item, "where") || says(item, "break"))
      return false;
    if (item.mark === "colon") return true;
    if (says(item, "length")) return true;
  }
  return false;
}

/** Nothing between a flavour and the cue but small words: "a sweet nose"; before "on the nose" a few others too. */
function close({ items }: Draft, { last }: Mention, n: number, form: SaidSense["form"]): boolean {
  let words = form === "after" ? 3 : 0;
  for (let m = last + 1; m < n; m++) {
    if (says(items[m], "glue") || says(items[m], "degree")) continue;
    if (items[m]?.mark !== "" || says(items[m], "join") || says(items[m], "start") || --words < 0)
      return false;
  }
  return true;
}

/** Flavours of the list that these end: "honey, plum and oak". */
function listBefore(
  { items }: Draft,
  loose: readonly Mention[],
  part: readonly Mention[],
): readonly Mention[] {
  let next = part[0];
  // ", and a bit of an oily feel in the mouth" begins anew.
  let m = (next?.at ?? 0) - 1;
  while (m > 0 && items[m]?.mark === "" && !says(items[m], "join")) m--;
  while (m > 0 && says(items[m - 1], "join")) m--;
  if (m > 0 && m < (next?.at ?? 0) - 1 && items[m - 1]?.mark === "comma" && says(items[m], "join")) return [];
  let from = loose.length;
  while (next !== undefined && from > 0) {
    const before = loose[from - 1];
    if (before === undefined) break;
    for (let m = before.last + 1; m < next.at; m++) {
      const item = items[m];
      if (item === undefined || item.mark === "comma") continue;
      if (
        item.mark !== "" ||
        says(item, "break") ||
        says(item, "where") ||
        says(item, "start") ||
        (says(item, "link") && !says(item, "glue") && !says(item, "degree"))
      )
        return loose.slice(from);
    }
    next = before;
    from--;
  }
  return loose.slice(from);
}

/** Of several flavours, those after the last "then" or "I get"; where asked, after the last "and" too. */
function lastPart(
  { items }: Draft,
  pending: readonly Mention[],
  n: number,
  joins: boolean,
): readonly Mention[] {
  const last = pending.at(-1);
  if (last === undefined) return [];
  for (let m = last.at - 1; m >= 0 && m > n - 20; m--) {
    const item = items[m];
    if (
      item === undefined ||
      item.mark !== "" ||
      (joins && says(item, "join")) ||
      says(item, "start") ||
      says(item, "this") ||
      says(item, "where") ||
      (says(item, "link") && !says(item, "glue") && !says(item, "degree") && !says(item, "join"))
    )
      return pending.filter(({ at }) => at > m);
  }
  return pending;
}
