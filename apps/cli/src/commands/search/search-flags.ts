import { SEARCH_LIMITS, Traded } from "@partsproof/house/protocol";
import { many, one, readNumber, readText, readVolume, readWhole, readWord, yes } from "../../flags/index.ts";
import { readChange, readSpan } from "./read-change.ts";

export const secondsFlag = one(
  readNumber("seconds", 0.01, SEARCH_LIMITS.seconds, "s"),
  "<0.01 to 60>",
  "how long it may search, 10 where left out; then the best so far and the proven gap",
);
export const fileFlag = one(
  readText("file"),
  "<file>",
  "a problem as JSON, no household needed: docs/search.md",
);

/** A search among a household's whiskeys. */
export const shelfFlags = {
  like: one(
    readText("like"),
    "<whiskey>",
    "in a household: come close to this one, which is not used itself",
  ),
  target: one(readText("target"), "<file>", "in a household: what is wanted, as JSON: docs/search.md"),
  change: many(readChange, "<attribute>=<by>", "more or less than that, such as smoke.smoke=-2"),
  "max-bottles": one(readWhole("bottles", 1, SEARCH_LIMITS.bottles), "<1 to 12>", "3 where left out"),
  "max-parts": one(readWhole("parts", 1, SEARCH_LIMITS.parts), "<1 to 60>", "8 where left out"),
  abv: one(readSpan("strength", 0, 100), "<low>-<high>", "strength of the mix in % vol, before water"),
  "min-age": one(readNumber("age", 0, 200, "years"), "<years>", "every whiskey at least as old"),
  "max-price": one(
    readNumber("price", 0, 1e9),
    "<amount>",
    "mean price of a litre, in the household's currency",
  ),
  batch: one(readVolume, "<volume>", "so much poured in all, all of it on the shelf"),
  "must-use": many(readText("must-use"), "<whiskey>", "this one is in it"),
  keep: many(readText("keep"), "<whiskey>", "this one is kept for another day"),
  "only-wood": many(readText("only-wood"), "<species>", "such as American oak"),
  "not-gone": yes("only whiskeys that are still sold"),
  mean: yes("takes every attribute by the mean of the parts, whatever mixes have shown"),
  learned: yes("takes whiskeys by what was learned of them from revealed flights, not as the shelf has them"),
  top: one(readWhole("top", 1, SEARCH_LIMITS.recipes), "<1 to 200>", "how many recipes, 20 where left out"),
};

export const ofFlag = one(
  readWord("of", Traded.options),
  `<${Traded.options.join("|")}>`,
  "what closeness is traded against; price where left out",
);
