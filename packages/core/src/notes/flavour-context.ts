import { isFlavour, type Item } from "./find-items.ts";
import { recalled } from "./recalled.ts";
import { is, type Draft, isPlain, isStop, type Says, says } from "./mention.ts";

const BESIDE: readonly Says[] = [
  "degree",
  "where",
  "not",
  "more",
  "less",
  "unsure",
  "memory",
  "there",
  "amplify",
];
const PASSED: readonly Says[] = ["glue", "link"];

const any = (item: Item, kinds: readonly Says[]): boolean =>
  kinds.some((kind) => says(item, kind) !== undefined && says(item, kind)?.form !== "heading");

const sure = ({ lexicon, at }: Draft, item: Item, n: number): boolean =>
  at[n] !== undefined || (isFlavour(item) && !lexicon.shy.has(item.words));

/** A word of feel or of the whole stands after "it is" as well. */
export const isFelt = (item: Item | undefined): boolean =>
  item?.senses.some(
    (sense) => sense.says === "flavour" && sense.attributes.some((id) => /^(?:feel|whole|taste)\./.test(id)),
  ) ?? false;

/** Whether what stands about an item speaks of flavours, so that a common word or a misspelt one may be one. */
export function inContext(draft: Draft, at: number): boolean {
  const { items } = draft;
  if (fragment(items, at)) return true;
  let words = 0;
  for (let left = at - 1, steps = 0; left >= 0 && steps < 6; left--, steps++) {
    const item = items[left];
    if (item === undefined || isStop(item)) break;
    if (item.mark === "comma" || says(item, "join")) {
      if (items[left - 1] !== undefined && sure(draft, items[left - 1] as Item, left - 1)) return true;
      if (item.mark === "comma") break;
      continue;
    }
    if (sure(draft, item, left) || any(item, BESIDE) || item.words === "like" || item.words === "of")
      return true;
    if (any(item, ["aside", "idiom", "break", "start"]) || (isPlain(item) && ++words > 1)) break;
  }
  const before = items[at - 1];
  // "sharp as a December morning"
  if (isFelt(items[at]) && items[at + 1]?.words === "as" && is(items[at + 2], "an")) return true;
  if (
    before !== undefined &&
    isFelt(items[at]) &&
    (says(before, "link") || says(before, "start") || before.words === "this is")
  )
    return true;
  for (let right = at + 1, steps = 0; right < items.length && steps < 5; right++, steps++) {
    const item = items[right];
    if (item === undefined || isStop(item)) break;
    if (
      sure(draft, item, right) ||
      any(item, ["where", "gone", "lessened", "increased"]) ||
      says(item, "degree")?.back
    )
      return true;
    if (is(item, "noteWords")) return true;
    if (any(item, ["aside", "idiom", "break"])) break;
    if (
      item.mark === "comma" &&
      !(items[right + 1] !== undefined && sure(draft, items[right + 1] as Item, right + 1))
    )
      break;
  }
  return false;
}

/** Of a common word for a thing or a place: right beside what asks for a flavour, by itself, or in a sentence that speaks of flavours before it. */
export const placed = (draft: Draft, at: number): boolean =>
  got(draft, at) ||
  inPlainContext(draft, at) ||
  fragment(draft.items, at) ||
  image(draft.items, at) ||
  likened(draft, at) ||
  recalled(draft.items, at);

const LIES = /^(?:after|at|before|by|in|on|under|with)\b/;

/** "A bakery at five in the morning.": a sentence without a verb paints what the glass is like. */
function image(items: readonly Item[], at: number): boolean {
  const article = is(items[at - 1], "articles") || items[at - 1]?.words === "the";
  if (!article || !isStop(items[at - 2]) || !LIES.test(items[at + 1]?.words ?? "")) return false;
  let n = at + 2;
  while (items[n]?.mark === "" && (isPlain(items[n] as Item) || says(items[n], "glue"))) {
    if (/..(?:ed|[^n]ing|[^s]s)$/.test(items[n]?.text ?? "")) return false;
    n++;
  }
  return n > at + 2 && isStop(items[n]);
}

/** "I got varnish and": with no article, and nothing of it behind. */
const got = ({ items }: Draft, at: number): boolean =>
  /^(?:get|got|getting|find|found)$/.test(items[at - 1]?.words ?? "") &&
  /^(?:i|i'm|we|we're|you|first i)$/.test(items[at - 2]?.words ?? "") &&
  ((items[at + 1]?.mark ?? "stop") !== "" || says(items[at + 1], "join") !== undefined);

/** "it's like walking into a church": what the sentence has said so far speaks of flavours. */
function likened({ items, at: mentions }: Draft, at: number): boolean {
  for (let n = at - 1; n >= 0 && n > at - 12 && !isStop(items[n]); n--) {
    const item = items[n] as Item;
    if (mentions[n] !== undefined || any(item, ["where", "memory", "degree"]) || item.words === "like")
      return true;
    if (any(item, ["aside", "idiom"])) return false;
  }
  return false;
}

/** Stricter: right beside a flavour or a phrase that asks for one. For words that are mostly something else. */
export function inPlainContext(draft: Draft, at: number): boolean {
  const { items } = draft;
  let left = at - 1;
  while (
    left >= 0 &&
    items[left]?.mark === "" &&
    (any(items[left] as Item, PASSED) || says(items[left], "join"))
  ) {
    if (any(items[left] as Item, ["degree", "unsure"]) && left === at - 1) return true;
    left--;
  }
  const before = items[left];
  if (before !== undefined) {
    const listed = before.mark === "comma" && left > 0 && sure(draft, items[left - 1] as Item, left - 1);
    if (listed || (before.mark === "" && sure(draft, before, left))) return true;
    if (before.mark === "" && any(before, ["degree", "memory", "unsure", "not", "more", "less"])) return true;
    if (before.mark === "" && says(before, "where") !== undefined && at - left <= 3) return true;
    if (before.mark === "colon" && says(items[left - 1], "where")) return true;
  }
  // "the glue has gone"
  const next = items[at + 1];
  if (next !== undefined && !isFelt(items[at]) && any(next, ["gone", "lessened"]) && next.words !== "away")
    return true;
  // "Fudge still there."
  if (next?.words === "still there") return true;
  let right = at + 1;
  while (items[right] !== undefined && (says(items[right], "join") || items[right]?.mark === "comma"))
    right++;
  const after = items[right];
  return right <= at + 2 && after !== undefined && after.mark === "" && sure(draft, after, right);
}

/** Strictest: after "a hint of", or in a list of flavours, and at the end of what it is in. */
export function inList(draft: Draft, at: number): boolean {
  const { items } = draft;
  const [before, after] = [items[at - 1], items[at + 1]];
  const open = after !== undefined && after.mark === "" && says(after, "join") === undefined;
  // "a bit of barley, a bit of oak"
  const ends = says(after, "where") !== undefined || says(after, "degree")?.of === true;
  const closed = !open || (ends && before?.words.endsWith(" of") === true);
  if (!closed || before === undefined) return false;
  if (says(before, "degree")?.of || (before.words === "of" && says(items[at - 2], "degree"))) return true;
  const listed = before.mark === "comma" || says(before, "join") !== undefined;
  const other = items[at - 2];
  if (listed && other !== undefined && other.mark === "" && sure(draft, other, at - 2)) return true;
  const next = items[at + 2];
  return before.mark === "colon" && next !== undefined && sure(draft, next, at + 2);
}

/** All that stands between two marks, but for small words: "Cork. And a date." */
function fragment(items: readonly Item[], at: number): boolean {
  let left = at - 1;
  while (
    left >= 0 &&
    items[left]?.mark === "" &&
    (any(items[left] as Item, ["glue", "degree"]) ||
      says(items[left], "join") ||
      /[a-z]'s$/.test(items[left]?.text ?? ""))
  )
    left--;
  const before = items[left];
  const after = items[at + (says(items[at + 1], "join") && isFelt(items[at]) ? 3 : 1)];
  return (
    (before === undefined || before.mark !== "") &&
    (after === undefined || after.mark !== "" || (says(after, "break") !== undefined && isFelt(items[at])))
  );
}
