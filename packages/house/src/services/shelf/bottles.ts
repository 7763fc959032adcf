import { born } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { unknownId } from "../refuse.ts";
import type { VesselRow, WhiskeyRow } from "../rows.ts";
import { liquidIn, shelfState } from "./shelf.ts";
import { whiskeyLabel } from "./shelf-names.ts";
import { post } from "./shelf-post.ts";
import { shownVessel } from "./vessels.ts";

/** As long as a label may be. */
const LABEL_CHARACTERS = 120;

export const bottleHandlers: Handlers<"addBottle"> = {
  /** S2: the vessel and what is in it, in one transaction. */
  addBottle: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const whiskey =
        (await records.find("whiskey", at.household, body.whiskeyId)) ??
        unknownId("whiskey", body.whiskeyId, ["whiskeyId"]);
      const capacityMl = body.capacityMl ?? whiskey.bottleMl;
      const priceMinor = body.priceMinor === undefined ? priceOf(whiskey, capacityMl) : body.priceMinor;
      const head = born(house, at.household);
      const row: VesselRow = {
        ...head,
        kind: "bottle",
        label: body.label === "" ? whiskeyLabel(whiskey).slice(0, LABEL_CHARACTERS) : body.label,
        capacityMl,
        whiskeyId: whiskey.id,
        batchId: null,
        priceMinor,
        openedAt: body.sealed ? null : head.createdAt,
      };
      await records.insert("vessel", row);
      const ml = body.levelMl ?? capacityMl;
      if (ml === 0) return shownVessel(await shelfState(records, at.household), row);
      const amount = { kind: "volume" as const, ml };
      const cost = priceMinor === null ? null : (priceMinor * ml) / capacityMl;
      const { shelf } = await post(records, house, at.household, [
        {
          from: { kind: "outside", name: "shop" },
          to: { kind: "vessel", vesselId: row.id },
          amount,
          liquid: liquidIn(whiskey, amount, cost),
          path: ["levelMl"],
        },
      ]);
      return shownVessel(shelf, row);
    }),
};

/** The price of one bottle of this size, in whole minor units; the whiskey's own price is that of `bottleMl`. */
function priceOf({ priceMinor, bottleMl }: WhiskeyRow, capacityMl: number): number | null {
  return priceMinor === null ? null : Math.round((priceMinor * capacityMl) / bottleMl);
}
