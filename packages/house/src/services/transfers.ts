import type { Account, BodyRead, Transfer } from "../protocol/index.ts";
import type { Handlers } from "./handler.ts";
import { knownHousehold } from "./known.ts";
import type { Records } from "./ports.ts";
import { refuse, unknownId } from "./refuse.ts";
import type { TransferRow, WhiskeyRow } from "./rows.ts";
import { liquidIn } from "./shelf.ts";
import { post } from "./shelf-post.ts";
import { undo } from "./shelf-undo.ts";

export const transferHandlers: Handlers<"listTransfers" | "addTransfer" | "undoTransfer"> = {
  /** Newest first by `seq`, which is the order that counts; so the cursor is the last `seq`. */
  listTransfers: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const before = query.cursor === undefined ? Infinity : Number(query.cursor);
      if (Number.isNaN(before)) {
        refuse(422, {
          code: "cursor_unreadable",
          path: ["cursor"],
          limit: "the next of a page of transfers",
          received: query.cursor,
          message: `cursor requires the next of a page of transfers, got ${query.cursor}`,
        });
      }
      const rows = (await records.list("transfer", at.household))
        .filter(
          (row) =>
            row.seq < before &&
            (query.batchId === undefined || row.batchId === query.batchId) &&
            (query.vesselId === undefined || touches(row, query.vesselId)),
        )
        .toSorted((a, b) => b.seq - a.seq);
      const items = rows.slice(0, query.limit);
      const last = items.at(-1);
      return {
        items: items.map(shownTransfer),
        next: rows.length > items.length && last ? String(last.seq) : null,
      };
    }),

  addTransfer: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      await knownVessel(records, at.household, body.from, "from");
      await knownVessel(records, at.household, body.to, "to");
      const whiskey = await whiskeyFor(records, at.household, body);
      const { from, to, amount, note } = body;
      const liquid = from.kind === "vessel" ? null : liquidFrom(body, whiskey);
      const { rows } = await post(records, house, at.household, [
        { from, to, amount, liquid, note, path: ["amount"] },
      ]);
      const [row] = rows;
      if (!row) throw new Error("post answered no row for one entry");
      return shownTransfer(row);
    }),

  undoTransfer: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const id = at["transfer"] ?? "";
      const row =
        (await records.find("transfer", at.household, id)) ?? unknownId("transfer", id, ["transfer"]);
      return shownTransfer(await undo(records, house, row));
    }),
};

export function shownTransfer(row: TransferRow): Transfer {
  const { id, seq, at, from, to, amount, liquid, batchId, flightId, note, undoneAt } = row;
  const whiskeyId = liquid === null || liquid.liquidId === "water" ? null : liquid.liquidId;
  return { id, seq, at, from, to, amount, whiskeyId, batchId, flightId, note, undoneAt };
}

function touches({ from, to }: TransferRow, vesselId: string): boolean {
  return [from, to].some((side) => side.kind === "vessel" && side.vesselId === vesselId);
}

async function knownVessel(
  records: Records,
  householdId: string,
  side: Account,
  key: "from" | "to",
): Promise<void> {
  if (side.kind === "vessel" && !(await records.find("vessel", householdId, side.vesselId)))
    unknownId("vessel", side.vesselId, [key, "vesselId"]);
}

/** The whiskey from the shop; refused where it is missing, or named for liquid that comes from elsewhere. */
async function whiskeyFor(
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
function liquidFrom(
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
