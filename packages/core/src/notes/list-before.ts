import { is, type Draft, isPlain, type Mention, says } from "./mention.ts";

/** Flavours of the list that these end: "honey, plum and oak". */
export function listBefore(
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
        isPlain(item) ||
        says(item, "break") ||
        says(item, "than") ||
        says(item, "other") ||
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

/** "poached", "leafy": how the flavour after it is. */
const MADE = /..(?:ed|y)$/;

/** Of several flavours, the last and those before it with nothing but small words between. */
function chained(items: Draft["items"], all: readonly Mention[]): readonly Mention[] {
  for (let from = all.length - 1; from > 0; from--) {
    const [before, next] = [all[from - 1], all[from]];
    if (before === undefined || next === undefined) break;
    for (let m = before.last + 1; m < next.at; m++) {
      const item = items[m];
      if (item === undefined || item.mark === "comma") continue;
      if (
        item.mark !== "" ||
        (isPlain(item) && !is(item, "listWords") && !(m === next.at - 1 && MADE.test(item.words))) ||
        says(item, "break") ||
        says(item, "length")
      )
        return all.slice(from);
    }
    // "honey a wee bit of smoke at the end": dictated without its comma.
    const between = items.slice(before.last + 1, next.at);
    const apart = between.every((item) => item.mark === "");
    if (apart && between.some((item) => says(item, "degree")?.of && item.words.endsWith(" of")))
      return all.slice(from);
  }
  return all;
}

/** Of several flavours, those after the last "then" or "I get"; where asked, after the last "and" too. */
export function lastPart(
  { items }: Draft,
  all: readonly Mention[],
  n: number,
  joins: boolean,
): readonly Mention[] {
  const last = all.at(-1);
  if (last === undefined) return [];
  const pending = chained(items, all);
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
