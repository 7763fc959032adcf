import { asIf, chosen, itTalks, oneOfThem } from "./after-all.ts";
import { agreedWith } from "./agreed.ts";
import { asTheOther } from "./as-the-other.ts";
import type { Item } from "./find-items.ts";
import { leftOut, sameAgain } from "./food-again.ts";
import { is, type Draft, isPlain, isStop, type Mention, says } from "./mention.ts";
import { isPerson } from "./otherwise.ts";
import { recalled } from "./recalled.ts";
import { smellsNearby } from "./surroundings.ts";

/** Leaves out what is not of this glass: hoped for, said by others, eaten, how it looks, another glass. */
export function leaveOut(draft: Draft): void {
  const { items } = draft;
  const about: Mention[] = [];
  // "the smoky one" is another glass.
  for (const mention of draft.mentions)
    if (is(items[mention.last + 1], "glasses") && is(items[mention.at - 1], "theThat"))
      mention.dropped = !oneOfThem(draft, mention);
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || draft.at[n] !== undefined) continue;
    const aside = says(item, "aside");
    // "all the colours mixed up"
    if (aside?.look && /^all(?: the)?$/.test(items[n - 1]?.words ?? "")) continue;
    // "the cherries do the talking"
    if (aside?.back && item.words === "talking" && items[n - 1]?.words === "the") continue;
    if (aside?.back) dropBefore(draft, n);
    else if (aside && (isImage(items, n) || asIf(items, n) || itTalks(items, n) || chosen(items, n)))
      continue;
    else if (aside) drop(draft, n, aside.look === true);
    if (onSomebody(items, n)) dropBefore(draft, n);
    if (narrates(draft, n)) dropStory(draft, n);
    about.push(...leftOut(draft, n));
    if (smellsNearby(draft, n)) {
      draft.elsewhere.add(n);
      drop(draft, n, false);
    }
    if (says(item, "said-before") || (says(item, "said-maybe") && putRight(draft, n))) drop(draft, n, false);
    // "reckons this is all coconut"
    if (reported(draft, n) && !agreedWith(items, n))
      drop(draft, says(items[n + 1], "this") ? n + 1 : n, false);
    otherGlass(draft, n);
  }
  if (about.length > 0) sameAgain(draft, about);
  for (const n of items.keys()) asTheOther(draft, n);
}

/** From an item to the end of what it speaks of. */
function drop({ items, at, elsewhere }: Draft, from: number, look: boolean, short = false): void {
  let seen = false;
  // "like the colour brown, like walnuts"
  const likened = [from - 1, from - 2].some((m) => /\blike$/.test(items[m]?.words ?? ""));
  for (let n = from + 1; n < items.length && n < from + 30; n++) {
    const item = items[n];
    if (item === undefined || isStop(item)) return;
    if (says(item, "where")?.form === "verb" && !seen && !look) {
      // "told us it smelled of garlic"
      elsewhere.add(n);
      continue;
    }
    if (says(item, "break") || says(item, "where") || says(item, "this") || item.mark === "colon") return;
    if (item.mark === "comma" && !look && !(seen && at[n + 1])) return;
    if (item.mark === "comma" && items[n + 1]?.words === "like" && likened) return;
    // "I expected thunder and was given a violin"
    if (says(item, "join") && says(items[n + 1], "link") && !says(items[n + 1], "glue")) return;
    if (
      (seen || short) &&
      (says(item, "start") ||
        (seen && !look && says(item, "not")) ||
        (seen && !look && says(item, "link") && !says(item, "glue")))
    )
      return;
    if (
      short &&
      (says(item, "not") ||
        says(item, "link") ||
        says(item, "more") ||
        says(item, "less") ||
        says(item, "join") ||
        item.mark !== "")
    )
      return;
    const mention = at[n];
    if (mention) {
      if (!mention.gone) mention.dropped = true;
      seen = true;
    }
  }
}

/** What a story speaks of, up to the next mark or "it", "there was". */
function dropStory({ items, at }: Draft, from: number): void {
  for (let n = from + 1; n < items.length && n < from + 14; n++) {
    const item = items[n];
    if (
      item === undefined ||
      item.mark !== "" ||
      says(item, "start") ||
      says(item, "break") ||
      says(item, "where")
    )
      return;
    const mention = at[n];
    if (mention && !mention.gone) mention.dropped = true;
  }
}

/** "bacon in the oven": what stands before it in the clause is no flavour of the glass. */
function dropBefore({ items, at }: Draft, from: number): void {
  // "reminds me of a cake in the oven" is what it is like.
  let commas = 0;
  let verbs = 0;
  for (let n = from - 1; n >= 0 && !isStop(items[n]); n--) {
    if (says(items[n], "memory") || items[n]?.words === "like") return;
    const item = items[n] as Item;
    if (item.mark === "comma" || item.mark === "colon") commas++;
    if (says(item, "start") || (says(item, "link") && !says(item, "glue")) || /ed$|'s$/.test(item.words))
      verbs++;
  }
  // "toast, marmalade, ash in the grate": a list without a verb is what the glass is like.
  if (commas > 0 && verbs === 0 && /^(?:in|on) the\b/.test(items[from]?.words ?? "")) return;
  // "leather, according to Mark"
  const start =
    items[from]?.words === "according to" && items[from - 1]?.mark === "comma" ? from - 2 : from - 1;
  for (let n = start; n >= 0 && n > from - 12; n--) {
    const item = items[n];
    if (item === undefined || item.mark !== "" || says(item, "break") || says(item, "where")) return;
    const mention = at[n];
    if (mention && !mention.not && !mention.gone) mention.dropped = true;
  }
}

/** "I said plum earlier", "I put toffee but it is treacle"; "I said toffee" alone stands. */
function putRight({ items }: Draft, from: number): boolean {
  let stops = 0;
  for (let n = from + 1; n < items.length && n < from + 12; n++) {
    if (isStop(items[n]) && ++stops > 1) return false;
    if (stops > 0 && n > from + 1 && isStop(items[n - 1]) && !says(items[n], "correct")) return false;
    if (says(items[n], "break") || says(items[n], "correct") || is(items[n], "earlier")) return true;
  }
  return false;
}

/** "A boy eating toast.": what a sentence without a verb paints is what the glass is like. */
function isImage(items: readonly Item[], n: number): boolean {
  if (!/^[a-z]+ing\b/.test(items[n]?.words ?? "")) return false;
  let m = n - 1;
  while (m >= 0 && items[m]?.mark === "" && (isPlain(items[m] as Item) || is(items[m], "an"))) m--;
  return (
    n - m > 2 &&
    is(items[m + 1], "an") &&
    (m < 0 || items[m]?.mark !== "" || says(items[m], "where") !== undefined)
  );
}

/** "a plaster on my thumb" */
const onSomebody = (items: readonly Item[], n: number): boolean =>
  items[n]?.words === "on" &&
  items[n + 1]?.words === "my" &&
  items[n + 2] !== undefined &&
  isPlain(items[n + 2] as Item);

const HIS = /^(?:my|his|her|our|their|your)$/;

/** "we sat by the fire", "my uncle kept bees": what somebody did, but not what the glass is likened to. */
function narrates(draft: Draft, n: number): boolean {
  const { items, lexicon } = draft;
  const had = items[n]?.words === "had";
  // "burned the" is an idiom of its own.
  const verb = items[n]?.words ?? "";
  // "I kept getting raspberry"
  if (
    verb === "kept" &&
    /^(?:coming|finding|getting|noticing|smelling|tasting)\b/.test(items[n + 1]?.words ?? "")
  )
    return false;
  const told = lexicon.told.has(says(items[n], "idiom") ? (verb.split(" ")[0] ?? "") : verb);
  const past =
    isPlain(items[n] as Item) &&
    /[a-z]{2}ed$/.test(verb) &&
    !lexicon.flavourWords.has(verb) &&
    draft.at[n] === undefined;
  if (!had && !told && !past) return false;
  let m = n - 1;
  while (m >= 0 && is(items[m], "storyBetween")) m--;
  const who = items[m];
  if (who === undefined || who.mark !== "") return false;
  const named = who.capital && isPlain(who) && !lexicon.known.has(who.words);
  const inLaw = who.words === "law" && items[m - 1]?.words === "in";
  const before = items[inLaw ? m - 3 : m - 1]?.words ?? "";
  const related = isPlain(who) && (HIS.test(before) || (before === "the" && !is(items[n], "thingsDo")));
  const anybody = /^(?:some|every)(?:body|one)$/.test(who.words) && is(items[n], "broughtBy");
  if (!is(who, "storyTellers") && !named && !related && !anybody) return false;
  if (past && !told && !had && !named && !/^(?:he|she|they|we)(?:'d)?$/.test(who.words) && !HIS.test(before))
    return false;
  if (had && ((who.words === "i" && !ago(items, n)) || isPraised(draft, n))) return false;
  for (let at = m - 1; at >= 0 && at > m - 16 && !isStop(items[at]); at--)
    if (says(items[at], "memory") || LIKENED.test(items[at]?.words ?? "")) return false;
  return !recalled(items, n);
}

const LIKENED = /\blike\b|^as (?:if|though)\b|\bthought\b/;

/** "I had a coffee an hour ago" */
function ago(items: readonly Item[], from: number): boolean {
  for (let n = from + 1; n < items.length && items[n]?.mark === ""; n++)
    if (/(?:^| )(?:ago|earlier|beforehand)$/.test(items[n]?.words ?? "")) return true;
  return false;
}

/** "we had a hint of smoke", "they had plum on the nose": of the glass after all. */
function isPraised({ items, at }: Draft, n: number): boolean {
  let seen = false;
  for (let m = n + 1; m < items.length && m < n + 12 && !isStop(items[m]); m++) {
    seen ||= at[m] !== undefined;
    if (says(items[m], "where")) return true;
    // "I've had far too much cheese"
    if (/\btoo (?:much|many)$/.test(items[m]?.words ?? "")) return false;
    if (!seen && ["degree", "liking", "unsure", "more"].some((kind) => says(items[m], kind as "more")))
      return true;
  }
  return false;
}

/** "Rob says", "my sister gets": somebody else's words. */
function reported({ items, lexicon }: Draft, n: number): boolean {
  const before = items[n - 1];
  if (!says(items[n], "reports") || before === undefined) return false;
  // "my brother, who knows about these matters, said"
  if (before.mark === "comma") return is(items[n], "reporting");
  if (before.mark !== "") return false;
  // "what was left in the bottle tasted of custard"
  if (items[n]?.words === "tasted" && is(items[n + 1], "of"))
    return isPerson(items, n - 1, lexicon) || is(before, "others");
  const late = /^(?:then|also|just|still)$/.test(before.words) && items[n - 2]?.capital === true;
  return (
    late ||
    isPerson(items, n - 1, lexicon) ||
    is(before, "others") ||
    (isPlain(before) &&
      !/^(?:(?:i|we|you|it|this|that|there)(?:'ve|'d|'s|ve)|nose|one|which|what|that|then|also|just|still)$/.test(
        before.words,
      ))
  );
}

const CODE = /^\d{1,3}$/;

function otherGlass(draft: Draft, n: number): void {
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
  if (!numbered && !called && !says(item, "other")) return;
  // "tobacco in one pocket and a toffee in the other"
  if (
    item.words === "the other" &&
    items.slice(Math.max(0, n - 12), n).some(({ words }) => /^(?:in |on )?one$/.test(words))
  )
    return;
  const first = named && numbered ? n - 1 : n;
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
  const said = is(next, numbered && !saysThis(items, n) ? "wasHad" : "wasOrIs") || WAS_NOT.test(next.words);
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
