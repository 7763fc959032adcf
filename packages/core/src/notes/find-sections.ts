import type { Item } from "./find-items.ts";
import type { Where } from "./language.ts";
import { type Draft, isStop, type Mention, type SaidSense, says } from "./mention.ts";

/** Which part of the tasting each item is in, and each flavour: by the last cue, or by one that stands after it ("oak on the palate"). */
export function findSections(draft: Draft, given: Where): readonly Where[] {
  const { items } = draft;
  const sections: Where[] = [];
  let here = given;
  for (let from = 0; from < items.length; ) {
    let to = from;
    while (to < items.length && !isStop(items[to])) to++;
    here = sentence(draft, from, to, here, sections);
    if (items[to]?.mark === "blank" && !headsOnly(draft, from, to)) here = given;
    sections[to] = here;
    from = to + 1;
  }
  return sections;
}

const headsOnly = ({ items, at }: Draft, from: number, to: number): boolean =>
  items.slice(from, to).every((_, n) => at[from + n] === undefined) && to - from < 4;

function cueAt(items: readonly Item[], n: number): SaidSense | undefined {
  const cue = says(items[n], "where");
  if (cue?.form !== "heading") return cue;
  const mark = items[n + 1]?.mark;
  return mark === "colon" || mark === "comma" ? cue : undefined;
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
      loose = [...loose, ...pending];
      pending = [];
      continue;
    }
    const cue = cueAt(items, n);
    if (cue?.where === undefined) continue;
    const where = cue.where;
    if (standsAfter(draft, n, to, cue, pending, style)) {
      const all =
        style === "forward" ? lastPart(draft, pending, n) : [...(style === null ? loose : []), ...pending];
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
  if (last === undefined || cue.form === "verb" || cue.form === "heading") return false;
  if (cue.form === "stays") return true;
  if (!followed(draft, n, to))
    return cue.form === "after" || style !== "forward" || close(draft, last, n) || true;
  if (cue.form === "after") return style !== "forward";
  return (
    close(draft, last, n) &&
    style !== "forward" &&
    !says(draft.items[n + 1], "link") &&
    draft.items[n + 1]?.mark !== "colon"
  );
}

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

/** Nothing but small words between a flavour and the cue: "a sweet nose". */
function close({ items }: Draft, { last }: Mention, n: number): boolean {
  for (let m = last + 1; m < n; m++) if (!says(items[m], "glue") && !says(items[m], "degree")) return false;
  return true;
}

/** Of several flavours, those after the last "and" or "then". */
function lastPart({ items }: Draft, pending: readonly Mention[], n: number): readonly Mention[] {
  const last = pending.at(-1);
  if (last === undefined) return [];
  for (let m = last.at - 1; m >= 0 && m > n - 20; m--) {
    const item = items[m];
    if (
      item === undefined ||
      item.mark !== "" ||
      says(item, "join") ||
      says(item, "start") ||
      says(item, "where")
    )
      return pending.filter(({ at }) => at > m);
  }
  return pending;
}
