import { foldLedger } from "@partsproof/core/ledger";
import { type NewIds, newIds, renewed, sameIds } from "./archive-ids.ts";
import { type ArchiveRows, archiveRows, type ArchiveTable, archiveTables } from "./archive-rows.ts";
import { checkChecksums } from "./checksums.ts";
import { archiveWrong } from "./archive-wrong.ts";
import { born } from "../birth.ts";
import { found } from "../findings/index.ts";
import type { Handlers } from "../handler.ts";
import { shownHousehold } from "../household/index.ts";
import type { House, Records } from "../ports.ts";
import { restoredFlights } from "./restore-flights.ts";
import type { HouseholdRow, TransferRow } from "../rows.ts";
import { coreTransfer } from "../shelf/index.ts";

export const restoreHandlers: Handlers<"restoreHousehold"> = {
  /** H2: a new household with new ids, all of the file or nothing. */
  restoreHousehold: async ({ house, body }) => {
    await checkChecksums(body);
    const rows = readRows(body.tables);
    checkVersions(rows);
    checkLedger(rows);
    const own = await freeId(house, body.household.id);
    const ids = own === null ? newIds(house, rows) : sameIds(rows);
    const flights = await restoredFlights(house, rows, ids, own !== null, body.recovery);
    return house.store.transaction(async (records) => {
      const { householdId: _, ...fresh } = born(house, "");
      const head = { ...fresh, id: own ?? fresh.id };
      const { name, currency, demo } = body.household;
      const household: HouseholdRow = { ...head, householdId: head.id, name, currency, demo };
      await records.insert("household", household);
      const mine = { householdId: household.id };
      for (const table of [
        "taster",
        "whiskey",
        "recipe",
        "recipeVersion",
        "vessel",
        "batch",
        "trialSet",
        "rest",
        "oakPiece",
        "checkTasting",
      ] as const) {
        for (const [i, row] of rows[table].entries())
          await records.insert(table, { ...renewed(ids, table, row, [table, i]), ...mine });
      }
      for (const [i, row] of rows.passedFile.entries())
        await records.insert("passedFile", {
          ...renewed(ids, "passedFile", row, ["passedFile", i]),
          ...mine,
        });
      for (const row of flights.flights) await records.insert("flight", { ...row, ...mine });
      for (const row of flights.sheets) await records.insert("sheet", { ...row, ...mine });
      for (const row of flights.entries) await records.insert("entry", { ...row, ...mine });
      for (const row of flights.words) await records.insert("taughtWord", { ...row, ...mine });
      for (const row of flights.keys) await records.insert("flightKey", { ...row, ...mine });
      const seqs = seqsOf(rows.transfer);
      for (const [i, row] of rows.transfer.entries()) {
        const transfer: TransferRow = {
          ...renewed(ids, "transfer", row, ["transfer", i]),
          ...mine,
          // Not asked of the counter row by row, which looks for the largest each time: it goes on from these.
          seq: seqs.get(row.id) ?? i + 1,
        };
        await records.insert("transfer", transfer);
      }
      await checkFindings(records, household.id, rows, ids);
      return shownHousehold(household);
    });
  },
};

/** H3: the household's own id, where no household of this house has it: it then comes back as it was, ids and all. */
const freeId = (house: House, id: string | undefined): Promise<string | null> =>
  id === undefined
    ? Promise.resolve(null)
    : house.store.transaction(async (records) => ((await records.find("household", id, id)) ? null : id));

/** Reads every row by its table's schema, so that nothing is written that the house itself would not have. */
function readRows(tables: Readonly<Record<string, readonly unknown[]>>): ArchiveRows {
  for (const name of Object.keys(tables)) {
    if (!archiveTables.some((table) => table === name))
      archiveWrong([name], `a table of ${archiveTables.join(", ")}`, name);
  }
  const read = (table: ArchiveTable) =>
    (tables[table] ?? []).map((row, i) => {
      const seen = archiveRows[table].safeParse(row, { reportInput: true });
      if (seen.success) return seen.data;
      const [issue] = seen.error.issues;
      const path = [
        table,
        i,
        ...(issue?.path ?? []).map((key) => (typeof key === "number" ? key : String(key))),
      ];
      return archiveWrong(path, issue?.message ?? "a row of this table", issue?.input);
    });
  return Object.fromEntries(archiveTables.map((table) => [table, read(table)])) as unknown as ArchiveRows;
}

/** R2: a recipe has its versions from 1 to the latest, and a batch names one of them. */
function checkVersions({ recipe, recipeVersion, batch }: ArchiveRows): void {
  for (const [i, { id, latestNumber }] of recipe.entries()) {
    const numbers = recipeVersion.filter(({ recipeId }) => recipeId === id).map((version) => version.number);
    const whole = numbers.toSorted((a, b) => a - b).every((number, at) => number === at + 1);
    if (!whole || numbers.length !== latestNumber)
      archiveWrong(["recipe", i, "latestNumber"], `versions 1 to ${latestNumber}`, numbers);
  }
  const latest = new Map(recipe.map(({ id, latestNumber }) => [id, latestNumber]));
  for (const [i, { recipeId, recipeNumber }] of batch.entries()) {
    const most = latest.get(recipeId) ?? 0;
    if (recipeNumber > most)
      archiveWrong(["batch", i, "recipeNumber"], `a version of 1 to ${most}`, recipeNumber);
  }
}

/** S4: the transfers can all have happened. */
function checkLedger({ vessel, transfer }: ArchiveRows): void {
  const folded = foldLedger(
    vessel,
    transfer.map((row) => coreTransfer({ ...row, householdId: "" })),
  );
  if (folded.ok) return;
  const { transferId, message } = folded.refusal;
  const i = transfer.findIndex(({ id }) => id === transferId);
  archiveWrong(["transfer", i], "transfers that can all have happened", message);
}

const MOST_SEQ = 1_000_000_000;

/** The order of the transfers by their ids: their own numbers where these say it, else counted anew. */
function seqsOf(transfers: ArchiveRows["transfer"]): ReadonlyMap<string, number> {
  const own = new Set(transfers.map(({ seq }) => seq));
  const whole = own.size === transfers.length && [...own].every((seq) => seq >= 1 && seq <= MOST_SEQ);
  const ordered = transfers.toSorted((a, b) => a.seq - b.seq);
  return new Map(ordered.map(({ id, seq }, i) => [id, whole ? seq : i + 1]));
}

/** A revealed flight must give its finding: its key, sheets and names belong together. */
async function checkFindings(
  records: Records,
  householdId: string,
  { flight }: ArchiveRows,
  ids: NewIds,
): Promise<void> {
  const names = new Map((await records.list("taster", householdId)).map(({ id, name }) => [id, name]));
  const keys = await records.list("flightKey", householdId);
  const sheets = await records.list("sheet", householdId);
  for (const row of await records.list("flight", householdId, { where: { state: "revealed" } })) {
    const i = flight.findIndex(({ id }) => ids.get(`flight:${id}`) === row.id);
    const opened = keys.find(({ flightId }) => flightId === row.id)?.opened;
    if (!opened || row.revealedAt === null)
      archiveWrong(["flight", i], "the key and the moment of a revealed flight", row.revealedAt);
    try {
      found(
        row,
        opened,
        sheets.filter(({ flightId }) => flightId === row.id),
        names,
      );
    } catch (error) {
      archiveWrong(["flight", i], "a key, sheets and names that belong together", String(error));
    }
  }
}
