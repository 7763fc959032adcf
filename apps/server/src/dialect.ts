import { closeSync, mkdirSync, openSync } from "node:fs";
import { dirname } from "node:path";
import type { StoreOptions } from "@partsproof/house/store";
import SqliteFile from "better-sqlite3";
import { PostgresDialect, type SqliteDatabase, SqliteDialect, type SqliteStatement } from "kysely";
import { Pool, type PoolClient } from "pg";

/** How long opening the file waits for another process that is writing to it. */
const OPENING_MS = 5000;
/** The same for a transaction. Short, because nothing else happens in this process meanwhile; the store tries again. */
const BUSY_MS = 20;

export interface OpenedDialect extends StoreOptions {
  /** For the start line: which database and where, without a password. */
  readonly says: string;
}

/** The driver for `postgres://…`, or for the path of an SQLite file, made if it is not there. */
export async function openDialect(place: string): Promise<OpenedDialect> {
  const scheme = /^([a-z][a-z0-9+.-]+):\/\//i.exec(place)?.[1];
  if (scheme === undefined) return openSqlite(place);
  if (/^postgres(ql)?$/i.test(scheme)) return openPostgres(place);
  throw new Error(`DATABASE_URL requires an address that begins with postgres://, got ${scheme}://`);
}

function openSqlite(file: string): OpenedDialect {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  // Made before SQLite makes it, so that no other user of this machine may read it; its log files get the same mode.
  closeSync(openSync(file, "a", 0o600));
  const database = new SqliteFile(file, { timeout: OPENING_MS });
  try {
    database.pragma("journal_mode = WAL");
    // What has been answered survives a power cut, not only the end of this process.
    database.pragma("synchronous = FULL");
    database.pragma("foreign_keys = ON");
    database.pragma(`busy_timeout = ${BUSY_MS}`);
  } catch (error) {
    database.close();
    const reason = error instanceof Error ? error.message : String(error);
    throw new Error(`house requires an SQLite file at ${file}, got: ${reason}`, { cause: error });
  }
  return {
    dialect: new SqliteDialect({ database: preparedOnce(database) }),
    database: "sqlite",
    says: `SQLite, ${file}`,
  };
}

const MOST_STATEMENTS = 500;

/** Keeps prepared statements: preparing is a third of what a short transaction takes. */
function preparedOnce(database: SqliteFile.Database): SqliteDatabase {
  const known = new Map<string, SqliteStatement>();
  return {
    close: () => {
      database.close();
    },
    prepare: (sql) => {
      const before = known.get(sql);
      if (before) return before;
      // What was prepared for other tables is not trusted with these.
      if (known.size >= MOST_STATEMENTS || /^\s*(create|alter|drop)\b/i.test(sql)) known.clear();
      const statement = database.prepare(sql);
      known.set(sql, statement);
      return statement;
    },
  };
}

/**
 * A few connections that stay. A new one costs PostgreSQL a process and finds nothing of our tables in its memory, so
 * that closing idle ones made the next crowd wait for 200 ms; more of them than processors only take turns.
 */
const POOL = { max: 8, idleTimeoutMillis: 0, application_name: "partsproof" } as const;

async function openPostgres(url: string): Promise<OpenedDialect> {
  const { hostname, port, pathname } = new URL(url);
  const where = `${hostname}:${port || 5432}${pathname}`;
  const pool = new Pool({ ...POOL, connectionString: url });
  // A connection that breaks while idle is replaced by the pool; without a listener it would end the process.
  pool.on("error", (error) => console.error(`PostgreSQL at ${where}: a connection broke: ${error.message}`));
  // Before anybody is given the connection.
  pool.on("connect", prepareOnce);
  try {
    (await pool.connect()).release();
  } catch (error) {
    await pool.end();
    const reason = error instanceof Error ? error.message || error.name : String(error);
    throw new Error(`DATABASE_URL requires a PostgreSQL that lets us in at ${where}, got: ${reason}`, {
      cause: error,
    });
  }
  return { dialect: new PostgresDialect({ pool }), database: "postgresql", says: `PostgreSQL, ${where}` };
}

/** A statement with parameters, in the form of `pg` that names it. */
interface Named {
  readonly name: string;
  readonly text: string;
  readonly values: readonly unknown[];
}

const names = new Map<string, string>();

/**
 * Has a connection prepare each statement the first time and then only run it: PostgreSQL spends more on parsing and
 * planning a short statement than on its rows. Statements without parameters stay as they are: they begin and end
 * transactions, or make tables.
 */
function prepareOnce(client: PoolClient): void {
  const plain = client.query.bind(client) as (sent: string | Named, values?: readonly unknown[]) => unknown;
  const query = (text: string, values?: readonly unknown[]): unknown => {
    const name = values !== undefined && values.length > 0 ? nameOf(text) : null;
    return name === null || values === undefined ? plain(text, values) : plain({ name, text, values });
  };
  client.query = query as unknown as PoolClient["query"];
}

function nameOf(text: string): string | null {
  const known = names.get(text);
  if (known !== undefined) return known;
  if (names.size >= MOST_STATEMENTS) return null;
  const name = `house_${names.size}`;
  names.set(text, name);
  return name;
}
