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

/**
 * PostgreSQL. The lock comes first because it is what waits: the snapshot is taken by the statement after it. Both go
 * in one message, for a short transaction is mostly messages.
 */
function ordered<T>(db: Kysely<Database>, alone: boolean, work: Work<T>, isolation: Isolation): Promise<T> {
  const level = isolation === "snapshot" ? "repeatable read" : "serializable";
  const mode = alone ? "exclusive" : "row exclusive";
  const begin = sql.raw(
    `start transaction isolation level ${level}; lock table ledger_counter in ${mode} mode`,
  );
  return db.connection().execute(async (connection) => {
    try {
      await begin.execute(connection);
      const result = await work(connection);
      const [ended] = (await sql<{ readonly command: string }>`commit`.execute(connection)).rows;
      // PostgreSQL answers a commit of what has failed with ROLLBACK, and no error.
      if (ended?.command === "ROLLBACK")
        throw new Error("commit requires a transaction that has not failed, got one that has");
      return result;
    } catch (error) {
      // Where the connection itself broke this fails too, and the pool lets go of it; the first failure is the one to tell.
      await sql`rollback`.execute(connection).catch(() => undefined);
      throw error;
    }
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
