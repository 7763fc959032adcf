import { is, type Draft, type Mention, type SaidSense, says } from "./mention.ts";

/** Whether a cue is of what stands before it; style: how the sentence has done it so far, "named" where by the same kind of cue. */
export function standsAfter(
  draft: Draft,
  n: number,
  to: number,
  cue: SaidSense,
  pending: readonly Mention[],
  style: "forward" | "back" | "named" | null,
): boolean {
  const last = pending.at(-1);
  if (last === undefined || cue.form === "verb" || cue.form === "heading" || cue.form === "bare")
    return false;
  // "some ginger and it goes on": of all that was drunk.
  if (cue.form === "stays" && draft.items[n - 1]?.words === "it" && says(draft.items[n - 2], "join"))
    return false;
  if (cue.form === "stays" || summedUp(draft, n)) return true;
  // "a plastic smell like a beach ball"
  if (cue.form === "head" && is(draft.items[n], "smells") && last.last === n - 1) return true;
  let m = n - 1;
  while (m >= 0 && leadsIn(draft, m)) m--;
  const before = draft.items[m];
  // "palate is softer"
  const verb = draft.items[n + 1];
  // "bit of ginger finish medium"
  const verdict =
    says(verb, "length") ??
    says(verb, "liking") ??
    /(?:^great|^good|^fine| better| nicer| worse)$/.test(verb?.words ?? "");
  if (cue.form === "head" && verdict) return false;
  const told = says(verb, "link") !== undefined && !says(verb, "glue");
  if (cue.form === "head" && (told || is(verb, "isNot"))) return false;
  // "and then on the palate, oak"
  if (
    says(before, "join") ||
    is(before, "thenNext") ||
    says(before, "break") ||
    (before !== undefined && says(before, "start") && cue.form === "after" && draft.at[m - 1] === undefined)
  )
    return false;
  if (cue.form === "after" && arrives(draft, last, n)) return true;
  // "there's chocolate at the end and a bit of smoke"
  const both =
    says(draft.items[n + 1], "join")?.join === "and" &&
    last.last >= n - 2 &&
    !says(draft.items[n + 2], "where");
  if (cue.form === "after" && both && style !== "back") return true;
  const near = close(draft, last, n, cue.form);
  if (!followed(draft, n, to)) {
    if (cue.form === "after") return true;
    return style === "forward" ? near && ends(draft, n) : near || (ends(draft, n) && !apart(draft, last, n));
  }
  // "pepper going down, nice and long"
  if (cue.form === "after" && near && !flavourBefore(draft, n, to)) return true;
  if (style === "forward" || !near) return false;
  // "camomile in the mouth it's thick": what follows says what it is there.
  const next = draft.items[n + 1];
  if (cue.form === "after" && says(next, "start") && next?.mark === "" && draft.at[n + 1] === undefined)
    return alike(draft, n, to);
  // "nail varnish palate light": what follows a bare name of a part is of it.
  if (cue.form === "head" && draft.at[n + 1] !== undefined && style !== "named") return false;
  return cue.form === "after" || (!says(draft.items[n + 1], "link") && draft.items[n + 1]?.mark !== "colon");
}

/** What leads to a part's name: "on the". */
const leadsIn = ({ items, at }: Draft, m: number): boolean => at[m] === undefined && is(items[m], "leadsIn");

/** "the smoke comes at the end": said of what stands before the verb. */
function arrives({ items, at }: Draft, { last }: Mention, n: number): boolean {
  const verb = items[n - 1];
  if (verb === undefined || verb.mark !== "" || !is(verb, "arriving")) return false;
  let verbs = 0;
  for (let m = last + 1; m < n; m++) {
    const item = items[m];
    if (item === undefined || item.mark !== "" || says(item, "join") || says(item, "start")) return false;
    if (is(item, "arriving") || says(item, "link")) verbs++;
    else if (!says(item, "glue")) return false;
  }
  return verbs > 0 && at[n + 1] === undefined;
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

/** A flavour between the cue and the next mark or cue. */
function flavourBefore({ items, at }: Draft, n: number, to: number): boolean {
  for (let m = n + 1; m < to; m++) {
    if (at[m]) return true;
    if (items[m]?.mark !== "" || says(items[m], "where") || says(items[m], "break")) return false;
  }
  return false;
}

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

const PARALLEL = 5;

/** "you get plum on the nose you get honey on the palate": what follows has a cue of its own behind it. */
function alike({ items, at }: Draft, n: number, to: number): boolean {
  let m = n + 1;
  while (m < to && at[m] === undefined && items[m]?.mark === "" && m - n < PARALLEL) m++;
  const next = at[m];
  if (next === undefined) return false;
  for (let k = next.last + 1; k < to && k <= next.last + PARALLEL; k++) {
    if (items[k]?.mark !== "" || says(items[k], "join") || says(items[k], "start")) return false;
    const where = says(items[k], "where");
    if (where !== undefined) return where.form === "after" || where.form === "head";
  }
  return false;
}

/** Nothing between a flavour and the cue but small words: "a sweet nose"; before "on the nose" a few others too. */
function close({ items }: Draft, { last }: Mention, n: number, form: SaidSense["form"]): boolean {
  let words = form === "after" ? 3 : 0;
  for (let m = last + 1; m < n; m++) {
    if (
      says(items[m], "glue") ||
      says(items[m], "degree") ||
      /^(?:you|me|up|than .*)$/.test(items[m]?.words ?? "")
    )
      continue;
    if (items[m]?.mark !== "" || says(items[m], "join") || says(items[m], "start") || --words < 0)
      return false;
  }
  return true;
}

/** "and that's on the nose": of all that was said before it. */
export function summedUp({ items }: Draft, n: number): boolean {
  let m = n - 1;
  while (m >= n - 3 && /^(?:on|in)?(?: ?the)?$/.test(items[m]?.words ?? "-")) m--;
  return is(items[items[n]?.words.startsWith("on ") ? n - 1 : m], "thatIs");
}
