import { is, isPlain, isStop, type Draft, says } from "./mention.ts";

const FURTHEST = 6;

const IS = /(?:^|')(?:m|am|is|was|were|are|re|been)$/;

/** "the room is really warm", "everything seemed hot", "we were a bit tired": how what stands about the glass is, or whoever holds it. */
export function warmRoom({ items, lexicon }: Draft, at: number): boolean {
  const ids = (items[at]?.senses ?? []).flatMap((sense) =>
    sense.says === "flavour" ? sense.attributes : [],
  );
  const burns = ids.some((id) => id === "feel.burn");
  const felt = burns || ids.some((id) => /^(?:whole|taste|feel)\./.test(id));
  const adjective = felt || (items[at]?.text ?? "").endsWith("y");
  let isSo = false;
  for (let n = at - 1; n >= 0 && n > at - FURTHEST; n--) {
    const item = items[n];
    if (item === undefined || item.mark !== "") return false;
    // "the welcome was warm", "my knees are rusty"
    if (isSo && adjective && isPlain(item) && is(items[n - 1], "determiners") && !is(item, "whiskeyNouns"))
      return true;
    // "the table's sticky", "my chair's hot"
    const owner = item.text.endsWith("'s") ? item.text.slice(0, -2) : "";
    if (
      owner !== "" &&
      felt &&
      isPlain(item) &&
      is(items[n - 1], "determiners") &&
      (lexicon.root.next.get(owner)?.phrase ?? null) === null &&
      !lexicon.kindsOf(owner, owner).has("whiskeyNouns")
    )
      return true;
    // "the room was quite smoky", "the windows were open"
    if (isSo && is(item, "surroundings") && adjective) return true;
    if (!felt) {
      if (!["degree", "amplify", "link", "glue"].some((kind) => says(item, kind as "link"))) return false;
      isSo ||= IS.test(item.words);
      continue;
    }
    if (burns && (is(item, "surroundings") || (is(item, "everything") && n < at - 1))) return true;
    if (is(item, "somebody")) return isSo || /'?[mr]e?$/.test(item.words.slice(1));
    if (!["degree", "amplify", "link", "glue"].some((kind) => says(item, kind as "link"))) return false;
    isSo ||= IS.test(item.words);
  }
  return false;
}

/** "her perfume was strong": what somebody wears or smokes, where it is not what the glass is like. */
export function wornNearby({ items }: Draft, at: number): boolean {
  const before = items[at - 1];
  if (!is(items[at], "worn") || before === undefined) return false;
  if (!is(before, "hisHer") && !before.words.endsWith("'s")) return false;
  for (let n = at - 1; n >= 0 && n > at - FURTHEST && items[n]?.mark === ""; n--)
    if (
      ["memory", "where", "degree", "this"].some((kind) => says(items[n], kind as "where")) ||
      /\blike\b|\bof\b/.test(items[n]?.words ?? "")
    )
      return false;
  return true;
}

/** "my hands smell of soap", "the glasses come out smelling of lemon": a smell of something else. */
export function smellsNearby({ items, at }: Draft, n: number): boolean {
  const words = items[n]?.words ?? "";
  // "hands still smell"
  if (says(items[n], "idiom")) return /^hands?\b.* smells?$/.test(words) && items[n + 1]?.words === "of";
  if (says(items[n], "where")?.where !== "nose" || !/^(?:smell|stink|reek)/.test(words)) return false;
  let found = false;
  for (let m = n - 1; m >= 0 && m > n - 12; m--) {
    const item = items[m];
    if (item === undefined || item.mark !== "" || at[m] !== undefined) break;
    if (says(item, "memory") || /\blike\b|\bof\b/.test(item.words)) return false;
    const water = item.words === "glass" && items[m - 1]?.words === "water";
    if (
      m > n - FURTHEST &&
      (water ||
        is(item, "surroundings") ||
        (is(item, "everything") && !(is(item, "others") && isStop(items[m - 1]))))
    )
      found = true;
  }
  return found;
}
