import type { Item } from "./find-items.ts";
import { is, type Draft, isPlain, type SaidSense, says } from "./mention.ts";

/** What leads to a part's name: "on my first proper" sip, "than the" nose; undefined where nothing does. */
function lead(items: readonly Item[], n: number): Item | undefined {
  let words = 1;
  for (let m = n - 1; m >= 0 && m >= n - 4; m--) {
    const item = items[m];
    if (item === undefined || item.mark !== "") return undefined;
    // "I like the mouth"
    if (item.words === "like the" && is(items[m - 1], "likers")) return undefined;
    if (is(item, "leads") || says(item, "than") || says(item, "as-much") || item.words === "like")
      return item;
    if (says(item, "glue") || says(item, "degree") || is(item, "beforeSip")) continue;
    if (!isPlain(item) || --words < 0) return undefined;
  }
  return undefined;
}

const STAYS = /^(?:lingers?|lasts|hangs?|persists|sticks) /;
/** "I've gone back" */
const GONE = /(?:gone|went|goes)$/;
const OTHERS = /^(?:he|she|they)'(?:s|ve|d)$/;
const IT = /^(?:it|he|she|it's|he's|she's)$/;
const AFTER: SaidSense = { says: "where", where: "finish", form: "verb" };

/** The cue of a part of the tasting that an item is, if it is one here. */
export function sectionCue({ items, at }: Draft, n: number): SaidSense | undefined {
  // "hangs around a while, gets a little ashy"
  const cue: SaidSense | undefined =
    says(items[n], "where") ??
    (says(items[n], "length") && STAYS.test(items[n]?.words ?? "") ? AFTER : undefined);
  const [before, next] = [items[n - 1], items[n + 1]];
  // "at the end of the table" is a place.
  if (is(next, "of") && is(items[n], "endOf")) return undefined;
  // "altogether sunnier" is no verdict.
  if (
    cue?.where === "whole" &&
    next?.mark === "" &&
    before?.mark === "" &&
    !says(before, "join") &&
    !says(before, "break") &&
    !/ /.test(items[n]?.words ?? "")
  )
    return undefined;
  // "the finish tastes of coffee"
  if (
    /^(?:tastes?|smells?)(?: of| like)?$/.test(items[n]?.words ?? "") &&
    says(before, "where")?.where === "finish"
  )
    return undefined;
  // "he's never tasted a pencil"
  if (
    cue?.form === "verb" &&
    /ed\b/.test(items[n]?.words ?? "") &&
    [n - 1, n - 2].some((m) => OTHERS.test(items[m]?.words ?? ""))
  )
    return undefined;
  // "it leans in the doorway" smells at nothing.
  if (/^lean(?:ing)? in$/.test(items[n]?.words ?? "") && IT.test(before?.words ?? "")) return undefined;
  // "No nose."
  const none = says(before, "not") !== undefined && next?.mark !== "" && cue?.where !== "finish";
  if (cue?.form === "head" && none) return undefined;
  if (cue?.form === "head") {
    const led = lead(items, n);
    if (led === undefined) return cue;
    // "less smoke than the nose" names it only to compare with it.
    if (!is(led, "leads")) return undefined;
    return { ...cue, form: "after" };
  }
  // "N: lemon", "N lemon", where a sentence or a part of it begins.
  if (cue?.form === "heading") {
    const begins = before === undefined || before.mark !== "" || at[n - 1] !== undefined;
    if (next?.mark === "colon") return cue;
    const letter = (items[n]?.words.length ?? 0) <= 3;
    // "peaches n cream"
    if (items[n]?.by.join !== undefined && before?.mark === "" && next?.mark === "") return undefined;
    const closes = next === undefined || next.mark !== "" || says(next, "join") !== undefined;
    if (
      (items[n]?.words.length ?? 0) > 2 &&
      closes &&
      (at[n - 1] !== undefined || (says(before, "length") && !GONE.test(before?.words ?? "")))
    )
      return { ...cue, form: "head" };
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
    // "sweet after, like caramel"
    if ((at[n - 1] !== undefined || says(before, "where")?.form === "after") && next?.mark !== "")
      return { ...cue, form: "after" };
    const said =
      next === undefined ||
      next.mark !== "" ||
      at[n + 1] ||
      (says(next, "degree") && next.words !== "some") ||
      (says(next, "link") &&
        !is(next, "comes") &&
        !says(next, "glue") &&
        [2, 3, 4].some((step) => at[n + step] !== undefined)) ||
      (says(next, "start") && next.words !== "it") ||
      says(next, "unsure") ||
      is(next, "stays");
    const begins =
      before === undefined || before.mark !== "" || says(before, "join") || says(before, "break");
    return said && begins ? cue : undefined;
  }
  // "we stayed late" is no finish.
  if (
    cue?.form === "stays" &&
    !/ing$|ent$/.test(items[n]?.words ?? "") &&
    at[n + 1]?.attributes.some((id) => /^(?:feel|taste|whole)/.test(id))
  )
    return undefined;
  // "Persist, and there is apricot."
  if (cue?.form === "stays" && is(items[n], "bids") && (before === undefined || before.mark !== ""))
    return undefined;
  if (cue?.form === "stays") return is(before, "persons") ? undefined : cue;
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
