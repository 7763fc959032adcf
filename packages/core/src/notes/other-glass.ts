import { drop, dropStory } from "./drop.ts";
import type { Item } from "./find-items.ts";
import { type Draft, is, isStop, says } from "./mention.ts";

const CODE = /^\d{1,3}$/;

/** "than the last one", "the smoke in glass 2", "the target was sweet": what is said of another glass leaves nothing, or turns round. */
export function otherGlass(draft: Draft, n: number): void {
  const { items, at, lexicon, elsewhere } = draft;
  const item = items[n];
  if (item === undefined) return;
  const named = is(items[n - 1], "numbered");
  const code = CODE.test(item.words);
  const numbered = named
    ? code || Object.hasOwn(lexicon.language.numbers, item.words)
    : code && item.words.length === 3;
  // "Two is cleaner, this is dirtier"
  const called =
    !named &&
    isStop(items[n - 1]) &&
    Object.hasOwn(lexicon.language.numbers, item.words) &&
    saysThis(items, n);
  // "Dave's glass"
  const owned = is(item, "glasses") && OWNER.test(items[n - 1]?.words ?? "");
  if (!numbered && !called && !owned && !says(item, "other")) return;
  // "tobacco in one pocket and a toffee in the other"
  if (
    item.words === "the other" &&
    items.slice(Math.max(0, n - 12), n).some(({ words }) => /^(?:in |on )?one$/.test(words))
  )
    return;
  const first = (named && numbered) || owned ? n - 1 : n;
  // "Trial 12 was poured on Monday": what a note begins with is this glass.
  if (named && MADE.test(items[n - 1]?.words ?? "") && !items.slice(0, first).some(isStop)) return;
  if (opens(draft, n) && !is(items[n + 1], "wasHad")) return;
  if (compared(draft, first)) {
    mark(draft, first);
    // "unlike the last glass, which was all smoke, this"
    const clause = items[n + 1]?.mark === "comma" && is(items[n + 2], "relative");
    if (clause) dropStory(draft, n + 2);
    else drop(draft, n, false, true);
    return;
  }
  const near = at[first - 2];
  // "the smoke in glass 2"
  if (near && is(items[first - 1], "ofGlass")) {
    if (!near.not && !near.gone && !near.more && !near.less) near.dropped = true;
    near.compared = true;
    if (items[n + 1]?.mark === "comma" && is(items[n + 2], "relative")) dropStory(draft, n + 2);
    return;
  }
  const next = items[n + 1];
  if (next === undefined) return;
  const from = /^(?:from|in)$/.test(items[first - 1]?.words ?? "") && is(next, "storyTellers");
  const said =
    is(next, numbered && !saysThis(items, n) ? "wasHad" : "wasOrIs") || WAS_NOT.test(next.words) || from;
  if (!said && !heads(draft, n)) return;
  if (says(items[first - 1], "link") || /\bis$/.test(items[first - 1]?.words ?? "")) return;
  for (let m = n + 1; m < items.length && m < n + 20; m++) {
    const one = items[m];
    if (one === undefined || isStop(one) || says(one, "this") || says(one, "break")) return;
    // "the last one was nothing but um there's lemon"
    if (m > n + 2 && is(one, "beganAnew")) return;
    // "is the smoky one, ash and iodine"
    if (one.mark === "comma" && at[m + 1] === undefined && !says(items[m + 1], "length")) return;
    const mention = at[m];
    // "the other one had a longer finish": a length that is compared is turned round, see finish-length.ts
    if (says(one, "length")?.stance === undefined) elsewhere.add(m);
    if (!mention) continue;
    // "the last one had more smoke": here there is less.
    if (mention.more || mention.less) [mention.more, mention.less] = [mention.less, mention.more];
    else if (!mention.gone) mention.dropped = true;
    mention.compared = true;
  }
}

const OWNER = /^(?!(?:here|it|that|there|this|what|where|who)'s$)[a-z]+'s$/;
const MADE = /^(?:attempt|batch|mix|trial|version)$/;
const WAS_NOT = /^(?:did|does|had|has|is|was)n't$/;

const COMPARED_TO = /^(?:hers|theirs|yours|(?:the )?(?:reference|target)|(?:her|his|their|your) glass)$/;

/** "Reference more yeasty", "target: fig": without a verb. */
function heads({ items, at }: Draft, n: number): boolean {
  const [before, next] = [items[n - 1], items[n + 1]];
  return (
    COMPARED_TO.test(items[n]?.words ?? "") &&
    (before === undefined || before.mark !== "") &&
    (next?.mark === "colon" ||
      at[n + 1] !== undefined ||
      ["more", "less", "degree"].some((kind) => says(next, kind as "more") !== undefined))
  );
}

function saysThis(items: readonly Item[], from: number): boolean {
  for (let n = from + 1; n < items.length && !isStop(items[n]); n++) if (says(items[n], "this")) return true;
  return false;
}

/** "first glass smells like a new car" at the head of a note that speaks of no other. */
const opens = ({ items, at }: Draft, n: number): boolean =>
  /^(?:the )?(?:first|second|third)\b/.test(items[n]?.words ?? "") &&
  items.slice(0, n).every((item, m) => at[m] === undefined && !isStop(item)) &&
  !items.some((item, m) => m > n && (says(item, "this") || says(item, "other")));

/** "than the last one" */
const compared = ({ items }: Draft, first: number): boolean =>
  says(items[first - 1], "than") !== undefined ||
  (says(items[first - 2], "than") !== undefined &&
    (says(items[first - 1], "glue") !== undefined || says(items[first - 1], "link") !== undefined));

/** What stands before "than the last one" is said against another glass. */
function mark({ items, at }: Draft, from: number): void {
  for (let n = from - 1; n >= 0 && n > from - 10 && !isStop(items[n]); n--) {
    const mention = at[n];
    if (mention) mention.compared = true;
  }
}
