import { type Draft, type Mention, type SaidSense, says } from "./mention.ts";

/** Whether a cue is of what stands before it. */
export function standsAfter(
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
export function followed({ items, at }: Draft, n: number, to: number): boolean {
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
