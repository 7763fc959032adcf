import { type Dialect, Kysely } from "kysely";
import type { Store } from "../services/index.ts";
import { untilDone } from "./again.ts";
import { migrate } from "./migrate.ts";
import type { Database } from "./query.ts";
import { openRecords } from "./records.ts";
import { openSession } from "./session.ts";
import { serializable } from "./transaction.ts";

export interface StoreOptions {
  /** With foreign keys switched on, if it is SQLite. */
  readonly dialect: Dialect;
  readonly database: Store["database"];
}

/** Opens the store and brings its tables up to date. The store owns the dialect and closes it. */
export async function createStore({ dialect, database }: StoreOptions): Promise<Store> {
  const db = new Kysely<Database>({ dialect });
  try {
    await untilDone(() => migrate(db, database));
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return {
    database,
    transaction: (work) =>
      untilDone((alone) =>
        serializable(db, database, alone, async (connection) => {
          const session = openSession();
          try {
            return await work(openRecords(connection, database, session));
          } finally {
            await session.close();
          }
        }),
      ),
    close: () => db.destroy(),
  };
}
