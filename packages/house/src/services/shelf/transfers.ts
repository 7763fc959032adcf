import type { Account, Transfer } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { Records } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { TransferRow } from "../rows.ts";
import { post } from "./shelf-post.ts";
import { undo } from "./shelf-undo.ts";
import { liquidFrom, whiskeyFor } from "./transfer-liquid.ts";

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

function shownTransfer(row: TransferRow): Transfer {
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
