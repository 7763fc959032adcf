import { asIf, chosen, itTalks, oneOfThem } from "./after-all.ts";
import { agreedWith } from "./agreed.ts";
import { asTheOther } from "./as-the-other.ts";
import { drop, dropBefore, dropStory } from "./drop.ts";
import type { Item } from "./find-items.ts";
import { leftOut, sameAgain } from "./food-again.ts";
import { type Draft, is, isPlain, isStop, type Mention, says } from "./mention.ts";
import { narrates } from "./narrates.ts";
import { otherGlass } from "./other-glass.ts";
import { isPerson } from "./is-person.ts";
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
