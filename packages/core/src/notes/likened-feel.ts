import { type Draft, is } from "./mention.ts";

const UNLIKE = /^(?:savoury|spirit\.heads)/;
const FEEL = /^(?:feel|time)\./;

/** "oily like engine oil", "coats like motor oil": a fat that a feel is likened to is no flavour besides. */
export function likenedFeel({ items, at, mentions }: Draft): void {
  for (const mention of mentions) {
    let n = mention.at - 1;
    while (n >= 0 && is(items[n], "someThing")) n--;
    if (!is(items[n], "likeA")) continue;
    const felt = at[n - 1]?.attributes.every((id) => FEEL.test(id)) ?? is(items[n - 1], "coats");
    if (felt && mention.attributes.every((id) => UNLIKE.test(id))) mention.dropped = true;
  }
}
