import { type Kysely, sql } from "kysely";
import type { Isolation, Store } from "../services/index.ts";
import type { Database } from "./query.ts";

type Work<T> = (db: Kysely<Database>) => Promise<T>;

/**
 * One serializable transaction: all that `work` did is kept, or none of it.
 *
 * @param alone waits until every other transaction of any process has ended, and holds off new ones meanwhile
 */
export function serializable<T>(
  db: Kysely<Database>,
  database: Store["database"],
  alone: boolean,
  work: Work<T>,
  isolation: Isolation = "serializable",
): Promise<T> {
  return database === "postgresql"
    ? ordered(db, alone, work, isolation)
    : db.connection().execute((connection) => immediate(connection, work));
}

/** PostgreSQL. The lock comes first because it is what waits: the snapshot is taken by the statement after it. */
function ordered<T>(db: Kysely<Database>, alone: boolean, work: Work<T>, isolation: Isolation): Promise<T> {
  const lock = alone
    ? sql`lock table ledger_counter in exclusive mode`
    : sql`lock table ledger_counter in row exclusive mode`;
  return db
    .transaction()
    .setIsolationLevel(isolation === "snapshot" ? "repeatable read" : "serializable")
    .execute(async (transaction) => {
      await lock.execute(transaction);
      return work(transaction);
    });
}

/**
 * SQLite, the write lock taken first: a transaction that reads and then writes can never find that it came too late.
 * It is always alone.
 */
export async function immediate<T>(connection: Kysely<Database>, work: Work<T>): Promise<T> {
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
