import type { Kysely } from "kysely";
import type { Records, Store } from "../services/index.ts";
import { sqlName } from "./names.ts";
import { nextSeq } from "./next-seq.ts";
import { type Database, narrowed, select } from "./query.ts";
import { fromStoredRow, toStoredRow } from "./row.ts";
import type { Session } from "./session.ts";
import { openHouseRecords } from "./house-records.ts";
import { tableNames } from "./tables.ts";

/** The rows of one transaction. Every statement but `households` and those `ofHouse` names the household. */
export function openRecords(db: Kysely<Database>, database: Store["database"], session: Session): Records {
  const run: Session["run"] = (query) => session.run(query);
  const list: Records["list"] = (table, householdId, query = {}) =>
    run(async () => {
      const start = select(db, table).where("household_id", "=", householdId);
      const rows = await narrowed(start, table, query, database).execute();
      return rows.map((row) => fromStoredRow(table, row));
    });

  return {
    list,

    find: (table, householdId, id) =>
      run(async () => {
        const row = await select(db, table)
          .where("household_id", "=", householdId)
          .where("id", "=", id)
          .executeTakeFirst();
        return row ? fromStoredRow(table, row) : null;
      }),

    insert: (table, row) =>
      run(async () => {
        await db
          .insertInto(sqlName(table))
          .values(toStoredRow(table, row, database))
          .execute();
      }),

    replace: (table, row) =>
      run(async () => {
        const { id, household_id, ...values } = toStoredRow(table, row, database);
        const done = await db
          .updateTable(sqlName(table))
          .set(values)
          .where("household_id", "=", household_id ?? null)
          .where("id", "=", id ?? null)
          .where("version", "=", row.version - 1)
          .executeTakeFirst();
        return done.numUpdatedRows === 1n;
      }),

    remove: (table, householdId, id) =>
      run(async () => {
        const done = await db
          .deleteFrom(sqlName(table))
          .where("household_id", "=", householdId)
          .where("id", "=", id)
          .executeTakeFirst();
        return done.numDeletedRows === 1n;
      }),

    removeHousehold: (householdId) =>
      run(async () => {
        for (const table of ["ledger_counter", ...tableNames.map(sqlName).toReversed()]) {
          await db.deleteFrom(table).where("household_id", "=", householdId).execute();
        }
        await db.deleteFrom("trail").where("about_household", "=", householdId).execute();
      }),

    households: (query = {}) =>
      run(async () => {
        const rows = await narrowed(select(db, "household"), "household", query, database).execute();
        return rows.map((row) => fromStoredRow("household", row));
      }),

    nextSeq: (householdId) => run(() => nextSeq(db, householdId)),

    ofHouse: openHouseRecords(db, database, run),
  };
}
