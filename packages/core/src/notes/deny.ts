import { backward, forward } from "./attach.ts";
import { type Draft, isStop, says } from "./mention.ts";

/** Whether a phrase closes its part of the sentence. */
export const ends = ({ items }: Draft, n: number): boolean =>
  items[n + 1] === undefined ||
  items[n + 1]?.mark !== "" ||
  says(items[n + 1], "join") !== undefined ||
  says(items[n + 1], "break") !== undefined;

const MUCH =
  /^(?:much|much of|so much|too much|a lot|a lot of|lot of|a great deal of|great deal of|many|very|overly|all that|that|plenty of|loads of)$/;

/** Hands a "no" to the flavour after it, a "has gone" to the one before. */
export function applyNot(draft: Draft, n: number): void {
  const item = draft.items[n];
  const not = says(item, "not");
  const gone = says(item, "gone");
  // "can't find any fruit" is no word on what stood before.
  const open = /(?:any|find|get|feel|smell|taste)$/.test(item?.words ?? "") && !ends(draft, n);
  if (gone !== undefined && !open) {
    const near = backward(draft, n, {
      words: 3,
      comma: /^(?:all |now )?gone\b/.test(item?.words ?? "") ? 0 : 2,
      stop:
        /\b(?:any|it|none)\b/.test(item?.words ?? "") ||
        draft.items[n - 1]?.mark === "ask" ||
        (isStop(draft.items[n - 1]) && ends(draft, n) && not !== undefined),
    });
    const ahead = not && forward(draft, n, { words: 3, link: true });
    if (near && !(ahead && !ends(draft, n))) {
      near.gone = true;
      if (gone.retracts) near.retracts = true;
      return;
    }
  }
  if (not === undefined) return;
  // "peat, yes; smoke no."
  const left = draft.at[n - 1];
  if (left && item?.words === "no" && (draft.items[n + 1] === undefined || isStop(draft.items[n + 1]))) {
    left.gone = true;
    return;
  }
  const mention = forward(draft, n, { words: 4, link: true });
  if (!mention) return;
  // "doesn't have much oak" has some.
  for (let m = n + 1; m < mention.at; m++)
    if (MUCH.test(draft.items[m]?.words ?? "")) {
      mention.little = true;
      return;
    }
  // "not the heaviest" is less heavy.
  if (draft.items[mention.at]?.more && mention.at > n + 1) mention.less = true;
  else mention.not = true;
  if (/^(?:not|isn't|isnt|is not|less|rather than|instead of)\b/.test(item?.words ?? ""))
    mention.denied = true;
}

/** "not toothpaste, garden mint" denies no mint. */
export function notButs({ items, mentions }: Draft): void {
  for (const [n, mention] of mentions.entries()) {
    const next = mentions[n + 1];
    if (!mention.denied || next === undefined || next.not || next.gone) continue;
    const stops = items.slice(mention.last, next.at).filter((item) => isStop(item)).length;
    if (stops === 0 && next.attributes.some((id) => mention.attributes.includes(id))) mention.dropped = true;
  }
}
