import type { Draft, Mention } from "./mention.ts";

/** What is eaten, cooked, lit or carried about; not what is hoped for or heard. */
const ABOUT =
  /\b(?:ate|brought|drank|eaten|eating|had|lit|spilled|spilt|(?:bak|barbecu|boil|brew|burn|chew|cook|fry|grill|munch|nibbl|paint|peel|polish|roast|smok)\w*)\b/;
const REACH = 14;

/** What an item, of a meal or of the room, has just left out: "somebody is frying onions". */
export const leftOut = ({ items, mentions }: Draft, from: number): readonly Mention[] =>
  ABOUT.test(items[from]?.words ?? "") && !items[from]?.words.endsWith(" with")
    ? mentions.filter(({ dropped, compared, at }) => dropped && !compared && at > from && at < from + REACH)
    : [];

/** "under the onions": the same again is no more of the glass than before. */
export function sameAgain({ items, mentions }: Draft, about: readonly Mention[]): void {
  for (const mention of mentions) {
    if (mention.dropped || !/(?:^| )the$/.test(items[mention.at - 1]?.words ?? "")) continue;
    if (/^(?:as|too)$/.test(items[mention.last + 1]?.words ?? "")) continue;
    if (about.some(({ word, at }) => word === mention.word && at < mention.at)) mention.dropped = true;
  }
}
