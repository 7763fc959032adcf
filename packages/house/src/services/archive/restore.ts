import { foldLedger } from "@partsproof/core/ledger";
import { type NewIds, newIds, renewed } from "./archive-ids.ts";
import { type ArchiveRows, archiveRows, type ArchiveTable, archiveTables } from "./archive-rows.ts";
import { archiveWrong } from "./archive-wrong.ts";
import { born } from "../birth.ts";
import { found } from "../findings/index.ts";
import type { Handlers } from "../handler.ts";
import { shownHousehold } from "../household/index.ts";
import type { Records } from "../ports.ts";
import { restoredFlights } from "./restore-flights.ts";
import type { HouseholdRow, TransferRow } from "../rows.ts";
import { coreTransfer } from "../shelf/index.ts";

export const restoreHandlers: Handlers<"restoreHousehold"> = {
  /** H2: a new household with new ids, all of the file or nothing. */
  restoreHousehold: async ({ house, body }) => {
    const rows = readRows(body.tables);
    checkVersions(rows);
    checkLedger(rows);
    const ids = newIds(house, rows);
    const flights = await restoredFlights(house, rows, ids);
    return house.store.transaction(async (records) => {
      const { householdId: _, ...head } = born(house, "");
      const { name, currency, demo } = body.household;
      const household: HouseholdRow = { ...head, householdId: head.id, name, currency, demo };
      await records.insert("household", household);
      const own = { householdId: household.id };
      for (const table of ["taster", "whiskey", "recipe", "recipeVersion", "vessel", "batch"] as const) {
        for (const [i, row] of rows[table].entries())
          await records.insert(table, { ...renewed(ids, table, row, [table, i]), ...own });
      }
      for (const [i, row] of rows.passedFile.entries())
        await records.insert("passedFile", { ...renewed(ids, "passedFile", row, ["passedFile", i]), ...own });
      for (const row of flights.flights) await records.insert("flight", { ...row, ...own });
      for (const row of flights.sheets) await records.insert("sheet", { ...row, ...own });
      for (const row of flights.entries) await records.insert("entry", { ...row, ...own });
      for (const row of flights.words) await records.insert("taughtWord", { ...row, ...own });
      for (const row of flights.keys) await records.insert("flightKey", { ...row, ...own });
      const ordered = [...rows.transfer.entries()].toSorted(([, a], [, b]) => a.seq - b.seq);
      for (const [i, row] of ordered) {
        const transfer: TransferRow = {
          ...renewed(ids, "transfer", row, ["transfer", i]),
          ...own,
          seq: await records.nextSeq(household.id),
        };
        await records.insert("transfer", transfer);
      }
      await checkFindings(records, household.id, rows, ids);
      return shownHousehold(household);
    });
  },
};

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
