import { type Burden, ETHANOL_G_PER_ML } from "@partsproof/core/sensory";
import { nameOf, type Shelf } from "../shelf/index.ts";
import { ethanolPerMl } from "./offer.ts";

/** The strongest that an intensity can be. */
const MOST_INTENSE = 10;

/** How strong a vessel's liquid is, and how smoky as far as somebody has said of the one whiskey in it. */
export function burdenOf(shelf: Shelf, vesselId: string): Burden {
  const { nameId } = nameOf(shelf, vesselId);
  const whiskey = shelf.whiskeys.get(nameId.slice(nameId.indexOf(":") + 1));
  const said = whiskey?.profile?.intensities["smoke.smoke"] ?? null;
  const value = typeof said === "object" && said !== null ? said.value : said;
  return {
    // Rounding of masses may pass 100 % by the last digit.
    abv20: Math.min(100, (100 * ethanolPerMl(shelf, vesselId)) / ETHANOL_G_PER_ML),
    smoke: value === null ? null : value / MOST_INTENSE,
  };
}
