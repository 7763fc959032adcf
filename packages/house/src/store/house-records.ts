import type { Kysely } from "kysely";
import type { HouseRecords, Store } from "../services/index.ts";
import { sqlName } from "./names.ts";
import { type Database, narrowed, select } from "./query.ts";
import { fromStoredRow, toStoredRow } from "./row.ts";
import type { Session } from "./session.ts";

/** The rows of the house itself, in the same transaction. */
export function openHouseRecords(
  db: Kysely<Database>,
  database: Store["database"],
  run: Session["run"],
): HouseRecords {
  return {
    list: (table, query = {}) =>
      run(async () => {
        const rows = await narrowed(select(db, table), table, query, database).execute();
        return rows.map((row) => fromStoredRow(table, row));
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
        const { id, ...values } = toStoredRow(table, row, database);
        const done = await db
          .updateTable(sqlName(table))
          .set(values)
          .where("id", "=", id ?? null)
          .where("version", "=", row.version - 1)
          .executeTakeFirst();
        return done.numUpdatedRows === 1n;
      }),

    remove: (table, id) =>
      run(async () => {
        const done = await db.deleteFrom(sqlName(table)).where("id", "=", id).executeTakeFirst();
        return done.numDeletedRows === 1n;
      }),
  };
}
