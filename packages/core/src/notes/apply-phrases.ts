import { backward, forward } from "./attach.ts";
import { applyNot, ends, notButs } from "./deny.ts";
import type { Item } from "./find-items.ts";
import { gradesBefore, leans } from "./leans.ts";
import { isFelt } from "./flavour-context.ts";
import { is, type Draft, isPlain, isStop, type Mention, says } from "./mention.ts";

/** Hands every degree, "no", hedge and comparison of the note to the flavour it is of. */
export function applyPhrases(draft: Draft): void {
  const { items, lexicon } = draft;
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || draft.at[n] !== undefined) continue;
    const lent = lexicon.leaning.get(item.words);
    if (lent !== undefined && lent !== null && leans(items, n, lexicon)) {
      const mention = forward(draft, n, { words: 0 });
      if (mention) degree(draft, n, mention, lent);
      continue;
    }
    if (lent !== undefined && lent !== null && gradesBefore(draft, n)) {
      degree(draft, n, draft.at[n - 1] as Mention, lent);
      continue;
    }
    applyNot(draft, n);
    applyChange(draft, n);
    applyDegree(draft, n);
    applyUnsure(draft, n);
  }
  for (const mention of draft.mentions) {
    if (items[mention.at]?.more && likens(draft, mention))
      mention.degrees.push({ strength: 7.8, amplify: false });
    else if (items[mention.at]?.more) compare(mention, items[mention.at - 1]);
    if (asked(draft, mention)) mention.unsure = true;
  }
  notButs(draft);
}

/** "hotter than a stove": very hot, and compared with no glass. */
function likens({ items }: Draft, { last }: Mention): boolean {
  const [than, article, what] = [items[last + 1], items[last + 2], items[last + 3]];
  return (
    says(than, "than") !== undefined &&
    is(article, "articles") &&
    what !== undefined &&
    what.mark === "" &&
    says(what, "other") === undefined &&
    says(what, "seconds") === undefined &&
    says(article, "other") === undefined
  );
}

/** "Thinner" is less of what weighs. */
function compare(mention: Mention, before: Item | undefined): void {
  if (is(before, "muchMore")) mention.amplified = true;
  if (
    (mention.inherent ?? 5) < 4 &&
    mention.attributes.some((id) => id === "feel.weight" || id === "time.finish")
  )
    mention.less = true;
  else mention.more = true;
}

function degree(draft: Draft, n: number, mention: Mention, strength: number): void {
  const amplify = says(draft.items[n], "amplify") !== undefined;
  mention.degrees.push({ strength, amplify });
}

/** "dry as a bone", "the heat of it!": strong, by how it is said. */
function exclaimed({ items, at }: Draft, n: number): boolean {
  const [before, next] = [at[n - 1], items[n + 1]];
  if (before === undefined) return false;
  // "dry as August"
  if (items[n]?.words === "as" && next !== undefined && isPlain(next) && isFelt(items[n - 1]))
    return items[before.at - 1]?.words !== "as";
  if (items[n]?.words === "as") return is(next, "likenedTo") && items[before.at - 1]?.words !== "as";
  return is(items[n], "ofIt") && items[before.at - 1]?.words === "the" && isStop(next);
}

function applyDegree(draft: Draft, n: number): void {
  const item = draft.items[n];
  if (item === undefined) return;
  const before = draft.at[n - 1];
  if (before && exclaimed(draft, n)) degree(draft, n, before, 7.8);
  const ahead = item.senses.find((sense) => sense.says === "degree" && !sense.back);
  const behind = item.senses.find((sense) => sense.says === "degree" && sense.back);
  const strength = [ahead, behind].map((sense) => (sense?.says === "degree" ? sense.strength : undefined));
  if (says(item, "there")?.strength !== undefined) {
    const mention = forward(draft, n, { words: 3, link: true });
    if (mention) degree(draft, n, mention, says(item, "there")?.strength ?? 5);
  }
  if (ahead === undefined && behind === undefined) return;
  // "the smell is quite strong um treacle"
  if (FILLER.test(draft.items[n + 1]?.words ?? "") && saidOfPart(draft, n)) return;
  // "somewhere behind, faintly, an old church"
  const aside = draft.items[n - 1]?.mark === "comma" && draft.items[n + 1]?.mark === "comma";
  const next =
    ahead &&
    forward(draft, n, {
      words: behind ? 0 : ahead.says === "degree" && ahead.of ? 2 : 1,
      comma: aside && item.words.endsWith("ly") ? 1 : 0,
    });
  if (next && (behind === undefined || !backward(draft, n, { words: 0 }) || adjacent(draft, n, next)))
    return degree(draft, n, next, strength[0] ?? 5);
  const alone = isStop(draft.items[n - 1]) && isStop(draft.items[n + 1]);
  const left = backward(draft, n, {
    words: alone ? 0 : 3,
    comma: behind || ends(draft, n) ? 1 : 0,
    // "Bacon. Lots."
    stop: (behind !== undefined && /\bit\b/.test(item.words)) || alone,
  });
  // "vanilla and a little bit of something"
  if (left && item.words.endsWith(" of")) return;
  // "treacle, really"
  if (!behind && (says(item, "amplify") || item.words.endsWith("too"))) return;
  if (left && (alone || behind || linked(draft, left, n) || (left.last >= n - 2 && ends(draft, n))))
    return degree(draft, n, left, strength[1] ?? strength[0] ?? 5);
  if (behind && !next) {
    const after = forward(draft, n, { words: 2, link: true });
    if (after) degree(draft, n, after, strength[1] ?? 5);
  }
}

const adjacent = (draft: Draft, n: number, { at }: Mention): boolean => {
  for (let between = n + 1; between < at; between++)
    if (!says(draft.items[between], "glue") && !says(draft.items[between], "degree")) return false;
  return true;
};
/** "the smoke is faint" */
const linked = (draft: Draft, { last }: Mention, n: number): boolean => {
  for (let between = last + 1; between < n; between++) if (says(draft.items[between], "link")) return true;
  return false;
};
const FILLER = /^(?:u[hm]+|e[rh]m?|hmm?|well|so)$/;
/** "the smell is quite": how strong a part is. */
function saidOfPart({ items }: Draft, n: number): boolean {
  let m = n - 1;
  while (says(items[m], "degree") || says(items[m], "amplify") || says(items[m], "link")) m--;
  return m < n - 1 && says(items[m], "where")?.form === "head";
}
const MUCH = /^(?:much|far|a lot|way|lots|a great deal|a good deal|miles|even more)/;

function applyChange(draft: Draft, n: number): void {
  const item = draft.items[n];
  if (says(item, "less")) {
    const mention = forward(draft, n, { words: 2, link: true });
    if (mention) {
      mention.less = true;
      if (MUCH.test(item?.words ?? "")) mention.amplified = true;
      return;
    }
  }
  if (says(item, "more")) {
    const mention = forward(draft, n, { words: 1 });
    if (mention) {
      mention.more = true;
      if (MUCH.test(item?.words ?? "")) mention.amplified = true;
      return;
    }
  }
  const change = says(item, "lessened") ?? says(item, "increased");
  // "a trickle of honey down the middle"
  if (change === undefined || (is(item, "ambiguousChange") && !ends(draft, n))) return;
  const mention = backward(draft, n, { words: 2, comma: 1 });
  if (mention) mention[change.says === "lessened" ? "less" : "more"] = true;
}

function applyUnsure(draft: Draft, n: number): void {
  if (says(draft.items[n], "unsure") === undefined) return;
  const next = forward(draft, n, { words: 3, link: true, start: true });
  const mention = next ?? backward(draft, n, { words: 1, comma: 1 });
  if (mention) mention.unsure = true;
}

/** "Something nutty?" */
function asked({ items }: Draft, { last }: Mention): boolean {
  for (let n = last + 1; n < items.length && n <= last + 4; n++) {
    if (items[n]?.mark === "ask") return true;
    if (isStop(items[n])) return false;
  }
  return false;
}
