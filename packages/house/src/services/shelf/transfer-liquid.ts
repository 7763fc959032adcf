import type { BodyRead } from "../../protocol/index.ts";
import type { Records } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { TransferRow, WhiskeyRow } from "../rows.ts";
import { liquidIn } from "./shelf.ts";

/** The whiskey from the shop; refused where it is missing, or named for liquid that comes from elsewhere. */
export async function whiskeyFor(
  records: Records,
  householdId: string,
  { from, whiskeyId, priceMinor }: BodyRead<"addTransfer">,
): Promise<WhiskeyRow | null> {
  const shop = from.kind === "outside" && from.name === "shop";
  if (shop && whiskeyId === undefined) {
    refuse(422, {
      code: "whiskey_needed",
      path: ["whiskeyId"],
      limit: "the whiskey that comes from the shop",
      received: null,
      message: "a transfer from the shop requires a whiskey, got none",
    });
  }
  for (const [key, value] of Object.entries({ whiskeyId, priceMinor })) {
    if (shop || value === undefined) continue;
    refuse(422, {
      code: "only_from_shop",
      path: [key],
      limit: "none but from the shop",
      received: value,
      message: `${key} requires a transfer from the shop, got one from ${from.kind === "vessel" ? "a vessel" : `the ${from.name}`}`,
    });
  }
  if (whiskeyId === undefined) return null;
  return (
    (await records.find("whiskey", householdId, whiskeyId)) ?? unknownId("whiskey", whiskeyId, ["whiskeyId"])
  );
}

/** Masses of what comes in; amounts that are none are told by the ledger, which is asked with them as they are. */
export function liquidFrom(
  { amount, priceMinor }: BodyRead<"addTransfer">,
  whiskey: WhiskeyRow | null,
): TransferRow["liquid"] {
  if (amount.kind === "all") {
    refuse(422, {
      code: "amount_kind",
      path: ["amount", "kind"],
      limit: "volume or mass",
      received: "all",
      message: "amount from the shop or the tap requires a volume or a mass, got all",
    });
  }
  const value = amount.kind === "volume" ? amount.ml : amount.g;
  if (!(value > 0)) {
    const unit = amount.kind === "volume" ? "mL" : "g";
    refuse(422, {
      code: "amount_not_positive",
      path: ["amount", amount.kind === "volume" ? "ml" : "g"],
      limit: `more than 0 ${unit}`,
      received: value,
      message: `poured amount requires more than 0 ${unit}, got ${value} ${unit}`,
    });
  }
  const full = liquidIn(whiskey, amount, null);
  if (whiskey === null) return full;
  if (priceMinor !== undefined) return { ...full, cost: priceMinor };
  if (whiskey.priceMinor === null) return full;
  const bottle = liquidIn(whiskey, { kind: "volume", ml: whiskey.bottleMl }, null);
  const share = (full.ethanolG + full.waterG) / (bottle.ethanolG + bottle.waterG);
  return { ...full, cost: whiskey.priceMinor * share };
}
