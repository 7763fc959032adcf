import type { Profile } from "../../protocol/index.ts";
import type { WhiskeyKey } from "./whiskeys.data.ts";

/** What the household has tasted for, in the order of the numbers below; the rest nobody has said, which is not 0. */
const SAID = [
  "grain.cereal",
  "fruit.orchard",
  "fruit.citrus",
  "fruit.dried",
  "plant.green",
  "plant.herb",
  "sweet.sugar",
  "sweet.honey",
  "sweet.vanilla",
  "spice.warm",
  "spice.sharp",
  "nut.nut",
  "wood.toasted",
  "smoke.smoke",
  "savoury.fat",
  "feel.weight",
] as const;

/** Tasted with water, all at one strength, so that they compare. */
const TASTED_AT = { basis: "abv20", value: 40 } as const;

// Invented, as the whiskeys are. Nobody has sat down with the counter blend; of the old loft nobody could say how much fat there is.
const intensities: Readonly<Partial<Record<WhiskeyKey, readonly (number | null)[]>>> = {
  "lamplighters rest": [4, 6, 3, 3, 3, 3, 3, 5, 4, 4, 5, 3, 4, 0, 6, 7],
  "gull stair": [4, 7, 3, 2, 3, 1, 3, 5, 3, 3, 1, 3, 2, 0, 7, 7],
  "three hearths": [4, 5, 2, 2, 5, 1, 2, 3, 3, 2, 2, 2, 2, 0, 6, 5],
  "long simmer": [4, 8, 2, 2, 2, 1, 3, 5, 4, 3, 1, 3, 2, 0, 5, 6],
  "full kettle": [5, 6, 3, 1, 4, 1, 3, 4, 4, 3, 2, 2, 2, 0, 6, 7],
  "shingle bank": [4, 4, 3, 1, 3, 1, 2, 4, 3, 1, 1, 2, 1, 0, 2, 2],
  "harbour wall": [4, 4, 3, 5, 1, 1, 4, 4, 3, 3, 2, 5, 3, 0, 3, 5],
  "fore deck": [2, 2, 2, 9, 0, 1, 5, 3, 2, 5, 2, 6, 5, 0, 3, 7],
  "smoke loft": [3, 3, 3, 1, 2, 2, 1, 2, 2, 1, 3, 1, 1, 8, 4, 5],
  "old loft": [2, 4, 3, 3, 1, 1, 2, 4, 3, 3, 2, 3, 3, 5, null, 6],
  "tun room": [6, 3, 1, 3, 1, 2, 4, 2, 3, 2, 2, 3, 3, 0, 3, 5],
  "ruby hour": [3, 3, 2, 6, 1, 1, 5, 3, 3, 3, 2, 2, 3, 0, 2, 5],
  "sugar wharf": [3, 4, 2, 3, 1, 1, 7, 4, 5, 3, 1, 2, 2, 0, 2, 4],
  "vintners bench": [3, 3, 3, 4, 2, 2, 2, 2, 2, 4, 4, 3, 5, 0, 2, 5],
  "oat loft": [7, 2, 1, 1, 2, 1, 2, 3, 3, 2, 2, 3, 5, 0, 4, 6],
  "straight furrow": [4, 1, 3, 1, 4, 8, 3, 2, 4, 4, 8, 1, 5, 0, 1, 4],
  "barn door": [5, 2, 3, 2, 2, 6, 4, 3, 4, 5, 8, 2, 6, 0, 2, 6],
  tollcorn: [5, 2, 2, 1, 2, 4, 5, 3, 5, 3, 5, 1, 5, 0, 1, 3],
  "cask 41": [4, 2, 3, 3, 1, 5, 4, 3, 5, 6, 7, 3, 7, 0, 2, 6],
  "sweet sack": [5, 3, 2, 1, 1, 1, 5, 7, 5, 3, 2, 3, 5, 0, 3, 5],
  "field wheat": [5, 2, 2, 1, 1, 1, 4, 4, 4, 2, 2, 2, 4, 0, 2, 3],
  "harvest proof": [5, 2, 3, 2, 1, 1, 5, 6, 6, 4, 3, 3, 7, 0, 3, 6],
  "crib corn": [6, 2, 2, 1, 1, 1, 6, 3, 6, 2, 2, 2, 3, 0, 3, 4],
  "ferry clay": [4, 2, 2, 2, 1, 1, 6, 3, 6, 4, 4, 2, 6, 0, 2, 4],
  wheatside: [4, 3, 2, 3, 0, 1, 7, 5, 6, 4, 2, 3, 6, 0, 3, 5],
  "high bank": [4, 2, 3, 3, 0, 1, 7, 3, 6, 5, 5, 3, 8, 0, 3, 7],
  "column light": [3, 3, 3, 0, 2, 0, 3, 3, 4, 1, 1, 1, 1, 0, 1, 1],
  "grain sixteen": [3, 3, 2, 1, 0, 0, 5, 3, 7, 3, 1, 4, 4, 0, 4, 4],
};

/** The profile of one of the demo's whiskeys; null where nobody has said anything. */
export function profileOf(key: WhiskeyKey): Profile | null {
  const said = intensities[key];
  if (said === undefined) return null;
  return {
    tastedAt: TASTED_AT,
    intensities: Object.fromEntries(SAID.map((attribute, n) => [attribute, said[n] ?? null])),
  };
}
