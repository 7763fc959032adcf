import { massesOf } from "@partsproof/core/ledger";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { shelfState, shownContents, together, wateringTo, waterOf } from "../shelf/index.ts";
import { checkRecipeBody } from "./recipe-body.ts";
import { slotLiquids } from "./slot-liquid.ts";

export const previewHandlers: Handlers<"previewRecipe"> = {
  /** What the parts give at `pouredMl`, stock left aside: by the same sums as a vessel of the ledger. */
  previewRecipe: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const { pouredMl, ...parts } = body;
      await checkRecipeBody(records, at.household, parts);
      const shelf = await shelfState(records, at.household);
      const liquidOf = slotLiquids(shelf);
      const all = parts.slots.reduce((sum, slot) => sum + slot.parts, 0);
      const poured = together(
        parts.slots
          .filter((slot) => slot.parts > 0)
          .map((slot) => liquidOf(slot.of).of((pouredMl * slot.parts) / all)),
      );
      const watering = parts.waterTo === null ? null : wateringTo(massesOf(poured), parts.waterTo);
      const water = watering?.ok ? { ml: watering.ml, g: watering.g } : null;
      const result = shownContents(shelf, together([poured, waterOf(water?.g ?? 0)]));
      return {
        pouredMl,
        contractionMl: pouredMl + (water?.ml ?? 0) - result.volumeMl,
        water,
        waterRefused: watering === null || watering.ok ? null : watering.message,
        result,
      };
    }),
};
