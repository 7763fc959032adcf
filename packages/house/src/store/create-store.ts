import { type Dialect, Kysely } from "kysely";
import type { Records, Store } from "../services/index.ts";
import { untilDone } from "./again.ts";
import { migrate } from "./migrate.ts";
import type { Database } from "./query.ts";
import { openRecords } from "./records.ts";
import { openSession } from "./session.ts";
import { sharedCommits } from "./shared-commit.ts";
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
  const commit = database === "sqlite" ? sharedCommits(db) : null;
  const inSession =
    <T>(work: (records: Records) => Promise<T>) =>
    async (connection: Kysely<Database>): Promise<T> => {
      const session = openSession();
      try {
        return await work(openRecords(connection, database, session));
      } finally {
        await session.close();
      }
    };
  return {
    database,
    transaction: (work, isolation) =>
      untilDone((alone) =>
        commit === null
          ? serializable(db, database, alone, inSession(work), isolation)
          : commit(inSession(work)),
      ),
    read: (work) => untilDone(() => db.connection().execute(inSession(work))),
    close: () => db.destroy(),
  };
}
