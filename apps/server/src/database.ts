import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import SqliteFile from "better-sqlite3";
import { createStore } from "@partsproof/house/store";
import type { Store } from "@partsproof/house/services";
import { PostgresDialect, SqliteDialect } from "kysely";
import { Pool } from "pg";

/** How long opening the file waits for another process that is writing to it. */
const OPENING_MS = 5000;
/** The same for a transaction. Short, because nothing else happens in this process meanwhile; the store tries again. */
const BUSY_MS = 20;

export interface OpenedDatabase {
  readonly store: Store;
  /** For the start line: which database and where, without a password. */
  readonly says: string;
}

/** Opens `postgres://…` with PostgreSQL and anything else as an SQLite file, made if it is not there. */
export async function openDatabase(place: string): Promise<OpenedDatabase> {
  return /^postgres(ql)?:\/\//.test(place) ? openPostgres(place) : openSqlite(place);
}

async function openSqlite(file: string): Promise<OpenedDatabase> {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  const database = new SqliteFile(file, { timeout: OPENING_MS });
  database.pragma("journal_mode = WAL");
  // What has been answered survives a power cut, not only the end of this process.
  database.pragma("synchronous = FULL");
  database.pragma("foreign_keys = ON");
  database.pragma(`busy_timeout = ${BUSY_MS}`);
  const store = await createStore({ dialect: new SqliteDialect({ database }), database: "sqlite" });
  return { store, says: `SQLite, ${file}` };
}

async function openPostgres(url: string): Promise<OpenedDatabase> {
  const { hostname, port, pathname } = new URL(url);
  const where = `${hostname}:${port || 5432}${pathname}`;
  const pool = new Pool({ connectionString: url, max: 10, application_name: "partsproof" });
  // A connection that breaks while idle is replaced by the pool; without a listener it would end the process.
  pool.on("error", (error) => console.error(`PostgreSQL at ${where}: a connection broke: ${error.message}`));
  try {
    (await pool.connect()).release();
  } catch (error) {
    await pool.end();
    const reason = error instanceof Error ? error.message || error.name : String(error);
    throw new Error(`DATABASE_URL requires a PostgreSQL that lets us in at ${where}, got: ${reason}`, {
      cause: error,
    });
  }
  const store = await createStore({ dialect: new PostgresDialect({ pool }), database: "postgresql" });
  return { store, says: `PostgreSQL, ${where}` };
}
