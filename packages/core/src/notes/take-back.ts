import { anotherAfterAll, family } from "./another-after-all.ts";
import { answers } from "./deny.ts";
import { is, type Draft, isStop, type Mention, says } from "./mention.ts";

/** Corrections that stand apart: "plum, wait, cherry", not "must wait". */
const BEFORE = 6;
const AGAIN = 6;
const AFTER = 9;

/** "plum, no, cherry": leaves out the flavour that was put right. */
export function takeBack(draft: Draft): void {
  const { items } = draft;
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || says(item, "correct") === undefined) continue;
    if (answers(draft, n) || (says(item, "not") && !puts(draft, n))) continue;
    if (
      is(item, "standAlone") &&
      !draft.at[n - 1] &&
      items[n - 1]?.mark === "" &&
      !says(items[n - 1], "glue")
    )
      continue;
    // "flat, sorry."
    if (is(item, "sorry") && (isStop(items[n + 1]) || /^sa(?:y|ys|id|ying)$/.test(items[n - 1]?.words ?? "")))
      continue;
    const wrong = last(draft, n);
    const right = next(draft, n);
    // "I get pine and I get hang on there's orange": what was begun is broken off, and the pine stands.
    if (wrong !== undefined && !says(item, "not") && beganAnew(items, wrong, n)) continue;
    // "um no smoke": nothing there to put right.
    // "no, I tell a lie, it wasn't cherry, it was almond"
    const instead = right && draft.mentions[right.nth + 1];
    if (wrong === undefined && right?.denied && instead && !isStop(items[right.last + 1]) && !instead.not)
      right.dropped = true;
    if (wrong === undefined && item.words.endsWith(" no")) deny(draft.at[n + 1]);
    if (wrong === undefined || right === undefined) continue;
    // "toast, no, hang on, there's cinnamon in it too"
    if (/^there(?:'s|s| is)?$/.test(items[n + 1]?.words ?? "") && isToo(items, right)) continue;
    // "plums or prunes, no, definitely prunes"
    const other = draft.mentions[wrong.nth - 1];
    if (other && sameWord(right, wrong) && !right.not && eitherOf(draft, other, wrong)) other.dropped = true;
    for (const one of sameBefore(draft, wrong)) one.dropped = true;
    // "no, not plum, cherry" names the wrong one again.
    if (sameWord(right, wrong) && draft.mentions[right.nth + 1] && (right.not || /\bnot\b/.test(item.words)))
      right.dropped = true;
    else if (says(item, "not")) right.not = false;
    // "no, tangerine more than orange"
    const later = draft.mentions[right.nth + 1];
    if (
      later?.word === wrong.word &&
      later.at - right.last < BEFORE &&
      /(?:^| )than$/.test(items[later.at - 1]?.words ?? "")
    )
      later.dropped = true;
  }
  for (const [n, mention] of draft.mentions.entries()) {
    const next = draft.mentions[n + 1];
    if (next !== undefined) anotherAfterAll(draft, mention, next);
    if (next !== undefined && mention.unsure && !next.unsure && butIsIt(draft, mention, next))
      mention.dropped = true;
    if (!mention.retracts) continue;
    for (const before of draft.mentions.slice(0, n))
      if (before.word === mention.word && !before.not) before.dropped = true;
  }
}

/** "and it's", "and I get" since then. */
function beganAnew(items: Draft["items"], { last }: Mention, n: number): boolean {
  const join = items.findIndex((item, m) => m > last && m < n && says(item, "join") !== undefined);
  return join > 0 && items.some((item, m) => m > join && m < n && says(item, "start") !== undefined);
}

const isToo = (items: Draft["items"], { last }: Mention): boolean =>
  [1, 2, 3].some((step) => /^(?:also|as|too)$/.test(items[last + step]?.words ?? ""));

function deny(mention: Mention | undefined): void {
  if (mention) mention.not = true;
}

/** "I want to say peach but it's apricot": another of its kind, and surely. */
function butIsIt({ items }: Draft, one: Mention, next: Mention): boolean {
  const between = items.slice(one.last + 1, next.at);
  return (
    family(one) === family(next) &&
    !next.not &&
    between.length < BEFORE &&
    !between.some((item) => isStop(item)) &&
    between.some((item, m) => item.words === "but" && is(between[m + 1], "itIs"))
  );
}

/** "plums or prunes": one of the two. */
const eitherOf = ({ items }: Draft, one: Mention, next: Mention): boolean => {
  const between = items.slice(one.last + 1, next.at);
  return (
    between.length < BEFORE &&
    between.some((item) => says(item, "join")?.join === "or") &&
    between.every((item) => item.mark !== "stop" && !says(item, "where"))
  );
};

/** "plum, plum": the same word right before it too. */
function sameBefore({ mentions }: Draft, wrong: Mention): readonly Mention[] {
  let from = wrong.nth;
  const to = from;
  while (
    from > 0 &&
    mentions[from - 1]?.word === wrong.word &&
    (mentions[from]?.at ?? 0) - (mentions[from - 1]?.last ?? 0) < AGAIN
  )
    from--;
  return mentions.slice(from, to + 1);
}

/** Whether a bare "no" puts right rather than denies: a mark behind it, or the same kind of thing on both sides. */
function puts(draft: Draft, n: number): boolean {
  const { items, at } = draft;
  const after = items[n + 1];
  if (after?.mark === "comma") return true;
  // "pear is it no apple", "is it cherry no plum"
  const before = last(draft, n);
  let open = false;
  for (let m = Math.max(0, (before?.at ?? n) - 2); m < n - 1; m++)
    open ||= is(items[m], "isIt") && is(items[m + 1], "pronouns");
  if (open && before !== undefined && at[n + 1] !== undefined && n - before.last < 4) return true;
  const [left, right] = [at[n - 1], at[n + 1]];
  // "no mint it's mint"
  const again = right && draft.mentions[right.nth + 1];
  if (left !== undefined && again?.word === right?.word && right !== undefined && !again?.not) return true;
  return (
    left !== undefined &&
    right !== undefined &&
    !left.not &&
    !says(items[left.at - 1], "not") &&
    family(left) === family(right)
  );
}

/** "wet leaves" and "leaves". */
const sameWord = ({ word: a }: Mention, { word: b }: Mention): boolean =>
  a === b || b.endsWith(` ${a}`) || a.endsWith(` ${b}`);

function last({ items, at }: Draft, n: number): Mention | undefined {
  let stops = 0;
  for (let m = n - 1; m >= 0 && m >= n - BEFORE; m--) {
    // "Blackcurrant. No. Hang on. It's tomato leaf."
    if (isStop(items[m]) && !says(items[m - 1], "correct") && ++stops > 1) return undefined;
    const mention = at[m];
    if (mention && !mention.dropped) return mention;
  }
  return undefined;
}

function next({ items, at }: Draft, n: number): Mention | undefined {
  for (let m = n + 1; m < items.length && m <= n + AFTER; m++) {
    if (items[m]?.mark === "blank" || says(items[m], "where")) return undefined;
    if (isStop(items[m]) && m > n + 2) return undefined;
    const mention = at[m];
    if (mention) return mention;
  }
  return undefined;
}
