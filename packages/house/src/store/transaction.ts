import { type Kysely, sql } from "kysely";
import type { Store } from "../services/index.ts";
import type { Database } from "./query.ts";

/** One serializable transaction: all that `work` did is kept, or none of it. */
export function serializable<T>(
  db: Kysely<Database>,
  database: Store["database"],
  work: (db: Kysely<Database>) => Promise<T>,
): Promise<T> {
  return database === "postgresql"
    ? db.transaction().setIsolationLevel("serializable").execute(work)
    : db.connection().execute((connection) => immediate(connection, work));
}

/** SQLite, the write lock taken first: a transaction that reads and then writes can never find that it came too late. */
async function immediate<T>(
  connection: Kysely<Database>,
  work: (db: Kysely<Database>) => Promise<T>,
): Promise<T> {
  await sql`begin immediate`.execute(connection);
  try {
    const result = await work(connection);
    await sql`commit`.execute(connection);
    return result;
  } catch (error) {
    // SQLite has rolled back by itself after some failures (a full disk); the first failure is the one to tell.
    await sql`rollback`.execute(connection).catch(() => undefined);
    throw error;
  }
}
