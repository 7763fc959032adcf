import { type Draft, type SaidSense, says } from "./mention.ts";

/** The cue of a part of the tasting that an item is, if it is one here. */
export function sectionCue({ items, at }: Draft, n: number): SaidSense | undefined {
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
  if (cue?.form === "stays") return /^(?:we|he|she|they|i|you)$/.test(before?.words ?? "") ? undefined : cue;
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
