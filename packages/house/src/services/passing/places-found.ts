import { placesTogether, plainChance, plainOdds, type SheetPlace } from "@partsproof/core/sensory";
import type { PlacesFound } from "../../protocol/index.ts";

export interface Placed {
  readonly flight: string;
  readonly taster: string;
  readonly place: SheetPlace;
}

const METHOD =
  "exact: rankings at random, each with a chance of one in its number of glasses (Poisson binomial law); a tie for the first place is none";

/** Sheets of one question, of any number of kitchens, and how much of it luck does; null of none. */
export function placesFound(placed: readonly Placed[], asked: "liked" | "close"): PlacesFound | null {
  if (placed.length === 0) return null;
  const { first, byLuck, pAtLeast, ahead } = placesTogether(placed.map(({ place }) => place));
  const tasters = new Set(placed.map(({ taster }) => taster)).size;
  const how = asked === "liked" ? "liked it best" : "put it closest to the target";
  const sheets = placed.length === 1 ? "1 sheet" : `${placed.length} sheets`;
  const odds = pAtLeast === 1 ? "always" : `in ${plainOdds(pAtLeast)} cases`;
  return {
    flights: new Set(placed.map(({ flight }) => flight)).size,
    sheets: placed.length,
    tasters,
    first,
    byLuck,
    luck: { p: pAtLeast, fraction: null, words: plainChance(pAtLeast), method: METHOD },
    ahead,
    sentence: `${first} of ${sheets} ${how}; luck alone gives ${byLuck.toFixed(1)}, and as many or more ${odds}.${
      tasters < placed.length
        ? ` ${tasters === 1 ? "One taster" : `${tasters} tasters`} gave them, so they are not all independent.`
        : ""
    }`,
  };
}
