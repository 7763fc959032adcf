import { backward, forward } from "./attach.ts";
import { isFelt } from "./flavour-context.ts";
import { is, type Draft, isStop, type Mention, says } from "./mention.ts";

/** Whether a phrase closes its part of the sentence, but for "now", "though" and the like. */
export const ends = ({ items }: Draft, n: number): boolean => {
  const next = items[n + 1];
  if (next !== undefined && is(next, "closers"))
    return items[n + 2] === undefined || items[n + 2]?.mark !== "";
  return (
    next === undefined ||
    next.mark !== "" ||
    says(next, "join") !== undefined ||
    says(next, "break") !== undefined
  );
};

const AWAY =
  /^(?:now|completely|entirely|already|altogether|by|from|in|at|on|here|again|too|though|for|since|before|after|when|once|totally|away|off|today|tonight|this|as|well|with|into|to|like|it|that|i|just|mostly|nearly|almost|quickly|fast|early|so|somewhere|forever|yet|because|within|under|without|really|long|thank|thankfully|sadly|alas)\b/;

/** "has gone a bit quiet", "gone soft": is otherwise, and not away. */
function becomes({ items, at }: Draft, n: number): boolean {
  const [item, next] = [items[n], items[n + 1]];
  if (!is(item, "becoming")) return false;
  if (next === undefined || next.mark !== "") return false;
  if (next.words === "to" || (next.words === "away" && items[n + 2]?.words === "to")) return true;
  if (at[n + 1] || says(next, "degree")) return !AWAY.test(next.words);
  if (says(next, "join") || says(next, "break") || says(next, "where") || says(next, "start")) return false;
  return !AWAY.test(next.words);
}

/** "Bitter? No.", but not "Plum? No. Cherry." */
const asked = ({ items, at }: Draft, n: number): boolean =>
  items[n - 1]?.mark === "ask" &&
  at[n - 2] !== undefined &&
  isStop(items[n + 1]) &&
  (at[n + 2] === undefined || items[(at[n + 2]?.last ?? n) + 1]?.mark === "ask");

/** "Oak, yes. Smoke, no." */
export const answers = ({ items, at }: Draft, n: number): boolean =>
  items[n]?.words === "no" && (asked({ items, at } as Draft, n) || said(items, at, n));

const said = (items: Draft["items"], at: Draft["at"], n: number): boolean =>
  at[n - 2] !== undefined &&
  items[n - 1]?.mark === "comma" &&
  isStop(items[n + 1]) &&
  items.some((item, m) => is(item, "yes") && items[m - 1]?.mark === "comma" && at[m - 2] !== undefined);

/** "and is gone", "then gone" */
const brief = ({ items }: Draft, n: number): boolean =>
  /(?:^| )gone$/.test(items[n]?.words ?? "") &&
  /(?:^|^and )(?:and|then)$/.test(items[n - 1]?.words ?? "") &&
  !says(items[n - 2], "break");

function ofFinish({ items }: Draft, { at, last }: Mention, n: number): boolean {
  for (let m = last + 1; m < n; m++) if (says(items[m], "where")?.where === "finish") return true;
  return (
    isFelt(items[at]) &&
    says(items[n - 1], "start") !== undefined &&
    items[n]?.words === "gone" &&
    n - last > 1
  );
}

/** What has gone, where it stands behind its verb, as other languages have it: "disappears the smoke". */
export const goneBehind = ({ items, at }: Draft, n: number): Mention | undefined =>
  says(items[n], "gone") &&
  items[n + 1]?.words === "the" &&
  at[n - 1] === undefined &&
  at[n - 2] === undefined
    ? at[n + 2]
    : undefined;

const FILLER = /^(?:okay?|right|just|well|yeah|yes)$/;
/** "before I forget the smell" */
const FORGET = /^(?:i|never|can't|don't|we|you)\b/;

/** "I expected cherry but no", "others get cherry, I can't", "cherry-free" */
function turnedDown(draft: Draft, n: number): boolean {
  const [before, item] = [draft.items[n - 1]?.words ?? "", draft.items[n]?.words ?? ""];
  if (item === "free") return draft.at[n - 1] !== undefined && ends(draft, n);
  if (!isStop(draft.items[n + 1])) return false;
  return (item === "no" && before === "but") || (before === "i" && /^(?:can|could|did|do)n't$/.test(item));
}

/** Hands a "no" to the flavour after it, a "has gone" to the one before. */
export function applyNot(draft: Draft, n: number): void {
  const item = draft.items[n];
  const not = says(item, "not");
  const gone = says(item, "gone");
  // "goes away the smoke, comes the honey"
  const behind = goneBehind(draft, n);
  if (behind !== undefined) {
    behind.gone = true;
    return;
  }
  // "can't find any fruit" is no word on what stood before; "can't find it" is.
  const named = is(draft.items[n + 1], "pronouns");
  // "a violet clears its throat"
  const throat = item?.words === "clears" && is(draft.items[n + 1], "determiners");
  const open = /(?:any|find|get|feel|smell|taste)$/.test(item?.words ?? "") && !ends(draft, n) && !named;
  // "Mouth: custard. Finish: none."
  const headed = draft.items[n - 1]?.mark === "colon" && says(draft.items[n - 2], "where") !== undefined;
  // "the acetone's away", not "put away"
  // "when everyone has gone"
  const people = is(draft.items[n - 1], "everything") || is(draft.items[n - 1], "others");
  const close =
    !throat && !people && (item?.words !== "away" || (draft.at[n - 1] !== undefined && ends(draft, n)));
  if (gone !== undefined && close && !open && !headed && !becomes(draft, n)) {
    const near = backward(draft, n, {
      words: named || /\b(?:it|them)$/.test(item?.words ?? "") ? 6 : 3,
      comma: /^(?:all |now )?gone\b/.test(item?.words ?? "") ? 0 : named ? 4 : 2,
      stop:
        named ||
        /\b(?:any|it|none)\b/.test(item?.words ?? "") ||
        draft.items[n - 1]?.mark === "ask" ||
        (isStop(draft.items[n - 1]) && ends(draft, n) && not !== undefined),
    });
    // "a spark that flicks and is gone" was there.
    if (near && brief(draft, n)) {
      near.degrees.push({ strength: 2.2, amplify: false });
      return;
    }
    // "a soft finish that melts away", "it's light, it's gone": how long it lasts.
    if (near && ofFinish(draft, near, n)) return;
    const ahead = not && forward(draft, n, { words: 3, link: true });
    if (near && !(ahead && !ends(draft, n))) {
      near.gone = true;
      if (gone.retracts) near.retracts = true;
      return;
    }
  }
  if (turnedDown(draft, n)) {
    const said = backward(draft, n, { words: 6, comma: 4 });
    if (said) said.gone = true;
    return;
  }
  // "the clove went", "the cardamom goes and"
  const before = draft.at[n - 1];
  if (
    before !== undefined &&
    /^(?:goes|went)$/.test(item?.words ?? "") &&
    ends(draft, n) &&
    !isFelt(draft.items[n - 1])
  ) {
    before.gone = true;
    return;
  }
  if (not === undefined) return;
  // "is this thing on no okay vanilla": an answer to something else.
  if (item?.words === "forget the" && FORGET.test(draft.items[n - 1]?.words ?? "")) return;
  if (item?.words === "minus" && draft.items[n + 1]?.words === "one") return;
  if (item?.words === "no" && FILLER.test(draft.items[n + 1]?.words ?? "")) return;
  // "peat, yes; smoke no.", "oak is not."
  const left = draft.at[n - 1] ?? (item?.words === "no" && answers(draft, n) ? draft.at[n - 2] : undefined);
  if (left && is(item, "notAfter") && (draft.items[n + 1] === undefined || isStop(draft.items[n + 1]))) {
    left.gone = true;
    return;
  }
  const mention = forward(draft, n, { words: 4, link: true, start: not.over === true });
  if (!mention) return;
  // "can't smell a thing, bit of vanilla"
  if (/^(?:a thing|anything|much yet)\b/.test(`${draft.items[n + 1]?.words} ${draft.items[n + 2]?.words}`))
    return;
  const subject = draft.items[n - 1]?.words ?? "";
  // "if you're not getting marzipan you're not trying"
  if (
    /^(?:he|she|they|we|you)(?:'re|'s| are| is)?$/.test(subject) &&
    /^if\b/.test(draft.items[n - 2]?.words ?? "")
  )
    return;
  if (/^if (?:he|she|they|we|you)\b/.test(subject)) return;
  // "even she couldn't find the smoke"
  if (/^(?:he|she|they)$/.test(subject) && /^(?:can|could|did|do)/.test(item?.words ?? "")) {
    mention.dropped = true;
    return;
  }
  // "I never get tobacco": a habit, and no word on this glass.
  if (
    item?.words === "never" &&
    /^(?:get|find|smell|taste|notice)s?\b/.test(draft.items[n + 1]?.words ?? "")
  ) {
    mention.dropped = true;
    return;
  }
  // "not fresh cherry": the cherry is there.
  if (
    item?.words === "not" &&
    draft.lexicon.leaning.has(draft.items[n + 1]?.words ?? "") &&
    mention.at === n + 2
  )
    return;
  // "doesn't have much oak" has some.
  for (let m = n + 1; m < mention.at; m++)
    if (is(draft.items[m], "amounts")) {
      mention.little = true;
      return;
    }
  // "not smoky enough"
  if (draft.items[mention.last + 1]?.words === "enough") {
    mention.little = true;
    return;
  }
  // "plum instead of pear" says nothing of a pear.
  if (/^(?:rather than|instead of|in place of)/.test(item?.words ?? "")) {
    mention.dropped = true;
    return;
  }
  // "the chocolate not sweet"
  if (
    draft.at[n - 1] !== undefined &&
    mention.attributes.includes("taste.basic") &&
    !isFelt(draft.items[n - 1]) &&
    item?.words === "not"
  ) {
    mention.dropped = true;
    return;
  }
  // "not the heaviest" is less heavy.
  if (draft.items[mention.at]?.more && mention.at > n + 1) mention.less = true;
  else mention.not = true;
  if (/^(?:not|isn't|isnt|is not|less|rather than|instead of)\b/.test(item?.words ?? ""))
    mention.denied = true;
}

/** "plum or maybe not plum, more like mint": within one sentence, and said to be something else. */
function replaced(items: Draft["items"], { last }: Mention, { at }: Mention): boolean {
  const between = items.slice(last + 1, at);
  // "cherries not cherries plums"
  if (between.length === 0) return true;
  return (
    between.length > 0 &&
    between.length < 7 &&
    !between.some((item) => isStop(item)) &&
    between.some((item) => is(item, "exchanged"))
  );
}

/** "not toothpaste, garden mint" denies no mint; nor does "warming rather than fiery". */
export function notButs({ items, mentions }: Draft): void {
  for (const [n, mention] of mentions.entries()) {
    const before = mentions[n - 1];
    // "not sweet at all, it's dry"
    const behind = [1, 2].map((step) => items[mention.last + step]?.words ?? "").join(" ");
    if (behind.startsWith("at all")) continue;
    if (
      mention.denied &&
      before !== undefined &&
      !before.not &&
      !items.slice(before.last + 1, mention.at).some((item) => isStop(item) || says(item, "where")) &&
      before.word !== mention.word &&
      before.attributes.some((id) => mention.attributes.includes(id))
    )
      mention.dropped = true;
    const next = mentions[n + 1];
    if (!mention.denied || next === undefined || next.not || next.gone) continue;
    if (before?.word === next.word && !items.slice(before.last, next.at).some((item) => isStop(item)))
      mention.dropped = true;
    // "Treacle. Not treacle, that's too heavy, golden syrup."
    const anew =
      isStop(items[mention.at - 2]) && !items.slice(mention.last, next.at).some((item) => isStop(item));
    if (before?.word === mention.word && !before.not && (anew || replaced(items, mention, next))) {
      before.dropped = true;
      mention.dropped = true;
    }
    const stops = items.slice(mention.last, next.at).filter((item) => isStop(item)).length;
    if (stops === 0 && next.attributes.some((id) => mention.attributes.includes(id))) mention.dropped = true;
  }
}
