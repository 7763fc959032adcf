import { type Draft, says } from "./mention.ts";

/** How far back the other glass's flavour may stand, in items. */
const REACH = 12;

/**
 * What this glass has of what was just said of another: "the last one was oaky, this one isn't", "the target has no pepper, this has
 * a little", "the first wasn't smoky, this one is".
 */
export function asTheOther({ items, at, mentions }: Draft, n: number): void {
  if (says(items[n], "this") === undefined) return;
  let m = n + 1;
  while (says(items[m], "link") && !says(items[m], "not") && !says(items[m], "degree")) m++;
  const [none, degree] = [says(items[m], "not"), says(items[m], "degree")];
  const behind = items[none || degree ? m + 1 : m];
  const end = behind?.words === "at all" ? items[m + 2] : behind;
  if (end !== undefined && end.mark === "") return;
  const other = mentions.findLast((mention) => mention.at < n && mention.at > n - REACH);
  if (other === undefined || !other.dropped || !other.compared || at[n + 1] !== undefined) return;
  // "this has a little", "trial a little"; "this is mild" says how it is.
  const verb = items[m - 1]?.words ?? "";
  const little = (degree?.strength ?? 5) < 3 && !/\b(?:is|was)$/.test(verb);
  if (
    other.not &&
    !none &&
    (degree !== undefined || m > n + 1 || /(?:has|is|was)$/.test(items[n]?.words ?? ""))
  ) {
    other.not = false;
    other.denied = false;
  } else if (other.not || !(none || little)) return;
  else if (!little) other.gone = true;
  other.dropped = false;
  if (little) other.little = true;
}
