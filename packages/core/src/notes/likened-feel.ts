import type { Draft } from "./mention.ts";

const COATS = /^(?:coats|coating|slides|sits|pours)$/;
const UNLIKE = /^(?:savoury|spirit\.heads)/;
const FEEL = /^(?:feel|time)\./;

/** "oily like engine oil", "coats like motor oil": a fat that a feel is likened to is no flavour besides. */
export function likenedFeel({ items, at, mentions }: Draft): void {
  for (const mention of mentions) {
    let n = mention.at - 1;
    while (n >= 0 && /^(?:an?|the|my|some|old)$/.test(items[n]?.words ?? "")) n--;
    if (!/^(?:like|as)(?: an?| the| some)?$/.test(items[n]?.words ?? "")) continue;
    const felt = at[n - 1]?.attributes.every((id) => FEEL.test(id)) ?? COATS.test(items[n - 1]?.words ?? "");
    if (felt && mention.attributes.every((id) => UNLIKE.test(id))) mention.dropped = true;
  }
}
