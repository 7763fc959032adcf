import type { Item } from "./find-items.ts";
import type { Where } from "./language.ts";
import { type Draft, is, isPlain, isStop, says } from "./mention.ts";

/** "the pear is": a flavour and what links it stand right before. */
export function ofFlavour({ items, at }: Draft, n: number): boolean {
  let m = n - 1;
  while (m >= 0 && says(items[m], "link") && !says(items[m], "start")) m--;
  return m < n - 1 && at[m] !== undefined && at[m]?.attributes.every((id) => id !== "time.finish") === true;
}

/** "a long, warm, spicy finish" */
function leadsToFinish({ items, at }: Draft, n: number): boolean {
  for (let m = n + 1; m < items.length && m < n + 9; m++) {
    const item = items[m];
    if (item === undefined || isStop(item)) return false;
    const where = says(item, "where");
    if (where !== undefined) return where.where === "finish";
    // "a long dusk of a finish"
    if (isPlain(item) && items[m + 1]?.words === "of" && items[m + 2]?.words === "a") m += 2;
    else if (
      at[m] ||
      item.mark === "comma" ||
      says(item, "join") ||
      says(item, "degree") ||
      says(item, "liking") ||
      says(item, "unsure")
    )
      continue;
    return false;
  }
  return false;
}

/** "it is so short." */
function saysIt(items: readonly Item[], n: number): boolean {
  if (!is(items[n], "lengths")) return false;
  const after = items[n + 1];
  // "and it's long and I want more"
  const goesOn = says(after, "join") !== undefined && says(items[n + 2], "start") !== undefined;
  if (
    after !== undefined &&
    after.mark === "" &&
    !says(after, "than") &&
    !says(after, "break") &&
    !goesOn &&
    !items[n]?.words.endsWith(" than")
  )
    return false;
  let m = n - 1;
  while (m >= 0 && (says(items[m], "degree") || is(items[m], "beforeLength"))) m--;
  return is(items[m], "it");
}

/** "It fades rather quickly." */
const itGoes = (items: readonly Item[], n: number): boolean =>
  / /.test(items[n]?.words ?? "") &&
  is(
    items
      .slice(Math.max(0, n - 5), n)
      .findLast(
        (item) => !(says(item, "link") || says(item, "glue") || says(item, "unsure")) || is(item, "itGoes"),
      ),
    "itGoes",
  ) &&
  (items[n + 1] === undefined || items[n + 1]?.mark !== "" || says(items[n + 1], "break") !== undefined);

/** "oak, drying, very long", "some oak not very long", "pepper half a minute": a length by itself behind flavours. */
function endsList({ items, at }: Draft, n: number): boolean {
  const words = items[n]?.words ?? "";
  if (!says(items[n], "seconds") && (/^\w+s\b/.test(words) || is(items[n], "goes"))) return false;
  let m = n - 1;
  while (
    says(items[m], "degree") ||
    says(items[m], "amplify") ||
    says(items[m], "not") ||
    is(items[m], "beforeLength") ||
    is(items[m], "aboutSo") ||
    /^\d+$/.test(items[m]?.words ?? "")
  )
    m--;
  if (items[m]?.mark === "comma" || says(items[m], "join")) m--;
  return at[m] !== undefined;
}

/** No flavour from here to the end of the sentence. */
function bare({ items, at }: Draft, n: number): boolean {
  for (let m = n + 1; m < items.length && m < n + 6; m++) {
    if (isStop(items[m])) return true;
    if (at[m] || (items[m]?.mark !== "" && items[m]?.mark !== "comma")) return false;
  }
  return n + 6 >= items.length;
}

/** Whether a cue of the finish, or a word of going, stands close by in the same part of the sentence. */
function beside({ items }: Draft, n: number): boolean {
  for (const step of [-1, 1])
    for (let m = n + step; m >= 0 && Math.abs(m - n) <= (step < 0 ? 6 : 3); m += step) {
      const item = items[m];
      if (item === undefined || item.mark !== "") break;
      if (says(item, "where")?.where === "finish" || is(item, "goes")) return true;
    }
  return false;
}

/** Behind a cue of the finish and nothing but how many. */
function counts(items: readonly Item[], n: number): boolean {
  let m = n - 1;
  while (m > n - 6 && items[m]?.mark === "" && !says(items[m], "where")) m--;
  return says(items[m], "where")?.where === "finish";
}

/** Whether the length is of the finish: in its section, or in a sentence that names it. */
export function aboutFinish(draft: Draft, n: number, sections: readonly Where[]): boolean {
  const { items, at } = draft;
  if (leadsToFinish(draft, n)) return true;
  const length = says(items[n], "length");
  if (length && (saysIt(items, n) || (itGoes(items, n) && !ofFlavour(draft, n)))) return true;
  // "Sweeter. Quick."
  if (length?.form === "beside" && isStop(items[n - 1]) && isStop(items[n + 1]) && (length.strength ?? 5) < 5)
    return true;
  if (length?.form === "beside") {
    let m = n - 1;
    while (says(items[m], "degree") || says(items[m], "amplify")) m--;
    const joined = says(items[m], "join") !== undefined || items[m]?.mark === "comma";
    return beside(draft, n) || (sections[n] === "finish" && joined && (items[n + 1]?.mark ?? "stop") !== "");
  }
  const next = items[n + 1];
  if (next !== undefined && next.mark === "" && (at[n + 1] || says(next, "idiom"))) {
    // "finish about twenty seconds dry"
    if (says(items[n], "seconds") && counts(items, n)) return true;
    if (!length || sections[n] !== "finish") return false;
  }
  if (sections[n] === "finish") return true;
  // "short & clean."
  const joined =
    says(items[n + 1], "join") !== undefined &&
    at[n + 2] !== undefined &&
    (items[n + 3]?.mark ?? "stop") !== "";
  if (length && joined && isStop(items[n - 1])) return true;
  const [before, after] = [items[n - 1], items[n + 1]];
  const marked = (item: Item | undefined): boolean => item === undefined || item.mark !== "";
  if (marked(before) && marked(after) && length && (isStop(before) || isStop(after))) return true;
  // "oak very drying very long"
  if (isStop(after) && endsList(draft, n)) return true;
  // "Thankfully brief."
  if (length && isStop(after) && isStop(items[n - 2]) && before?.mark === "" && !at[n - 1]) return true;
  // "Tails off rather sharply."
  if (isStop(before) && length && length.strength !== undefined && length.strength < 5 && bare(draft, n))
    return true;
  for (let m = n + 1; m < items.length && m < n + 12 && !isStop(items[m]); m++)
    if (says(items[m], "where")) return says(items[m], "where")?.where === "finish";
  return false;
}
