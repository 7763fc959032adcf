import { edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { staleEdit, unknownId } from "../refuse.ts";
import type { OakPieceRow, RestRow } from "../rows.ts";
import { adviceOf } from "./advice-of.ts";
import { needRule } from "./begin-rest.ts";
import { knownRest, momentOf, needOpen } from "./known-rest.ts";
import { loseWithWood } from "./lose-with-wood.ts";
import { readerOf, restsOf, restTold, wholeRests } from "./read-rests.ts";

type Routes = "listRests" | "editRest" | "removeRest" | "adviseRest" | "pullRest";

export const restHandlers: Handlers<Routes> = {
  listRests: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const batchId = at["batch"] ?? "";
      if ((await records.find("batch", at.household, batchId)) === null)
        unknownId("batch", batchId, ["batch"]);
      const wholes = await wholeRests(records, at.household, { batchId });
      return { items: await restsOf(records, at.household, wholes) };
    }),

  editRest: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const old = await knownRest(records, at);
      const { version, ...some } = body;
      const said = Object.fromEntries(Object.entries(some).filter(([, value]) => value !== undefined));
      const row: RestRow = { ...edited(house, "rest", old, version), ...said };
      const kind = row.kind === "glass" ? "glass" : "oak";
      needRule({ kind, pull: row.pull, leadsAt: row.leadsAt });
      if (!(await records.replace("rest", row))) staleEdit("rest", version, row.version);
      return restTold(records, row);
    }),

  /** O6: as though it had not been begun. The kept sample stays in its vial, what was lost stays lost. */
  removeRest: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const rest = await knownRest(records, at);
      if (rest.version !== query.version) staleEdit("rest", query.version, rest.version);
      for (const table of ["checkTasting", "oakPiece"] as const)
        for (const { id } of await records.list(table, at.household, { where: { restId: rest.id } }))
          await records.remove(table, at.household, id);
      await records.remove("rest", at.household, rest.id);
      return undefined;
    }),

  adviseRest: async ({ house, at }) => {
    const { whole, read } = await house.store.transaction(async (records) => {
      const { id } = await knownRest(records, at);
      const [found] = await wholeRests(records, at.household, { id });
      return { whole: found ?? unknownId("rest", id, ["rest"]), read: await readerOf(records, at.household) };
    });
    // The model takes its time, and nobody waits for a transaction meanwhile.
    return adviceOf(whole, read, house.clock.now(), "all");
  },

  /** O3: all wood that is in comes out, the loss leaves the vessel, the rest is over. */
  pullRest: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const old = await knownRest(records, at);
      needOpen(old, "ending a rest");
      const [whole] = await wholeRests(records, at.household, { id: old.id });
      const pieces = whole?.pieces ?? [];
      const endedAt = momentOf(body.at, house.clock.now(), lastOf(pieces) ?? old.beganAt);
      const head = edited(house, "rest", old, body.version);
      const note = [old.note, body.note].filter((text) => text !== "").join("\n");
      const row: RestRow = { ...head, endedAt, lossMl: body.lossMl, note };
      if (!(await records.replace("rest", row))) staleEdit("rest", body.version, row.version);
      for (const piece of pieces) {
        if (piece.outAt !== null) continue;
        const out = { ...edited(house, "oak piece", piece, piece.version), outAt: endedAt };
        if (!(await records.replace("oakPiece", out))) staleEdit("oak piece", piece.version, out.version);
      }
      if (whole !== undefined && body.lossMl > 0) {
        const noted = `lost in filtering ${whole.batch.name}`;
        await loseWithWood(records, house, whole.batch, { ml: body.lossMl, note: noted });
      }
      return restTold(records, row);
    }),
};

/** The last moment at which any of it went in or came out. */
const lastOf = (pieces: readonly OakPieceRow[]): string | undefined =>
  pieces
    .flatMap(({ inAt, outAt }) => (outAt === null ? [inAt] : [inAt, outAt]))
    .toSorted()
    .at(-1);
