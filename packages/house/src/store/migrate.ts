import { type Kysely, sql } from "kysely";
import { type Migration, Migrator } from "kysely/migration";
import type { Store } from "../services/index.ts";
import { type Migrations, migrations } from "./migrations/index.ts";
import type { Database } from "./query.ts";
import { serializable } from "./transaction.ts";

const TABLE = "house_migration";

/**
 * Brings the tables to the newest version, all or nothing. Forward only: a store that a newer version of the house
 * has changed is refused.
 *
 * @param known the steps to take, for tests of older versions
 */
export async function migrate(
  db: Kysely<Database>,
  database: Store["database"],
  known: Migrations = migrations,
): Promise<void> {
  const names = Object.keys(known);
  const done = await stepsDone(db, database);
  const newer = done.findLast((name) => !names.includes(name));
  if (newer !== undefined) {
    throw new Error(
      `store requires tables of version ${names.at(-1)} or older, got ${newer}: ` +
        "a newer version of Parts & Proof has changed this database, open it with that version",
    );
  }
  if (done.length === names.length) return;
  if (database === "postgresql") return takeSteps(db, database, known);
  // Kysely does not count on SQLite's transactional DDL, so the transaction is ours.
  await serializable(db, database, true, (connection) => takeSteps(connection, database, known));
}

async function takeSteps(
  db: Kysely<Database>,
  database: Store["database"],
  known: Migrations,
): Promise<void> {
  const steps = Object.fromEntries(
    Object.entries(known).map(([name, up]): [string, Migration] => [name, { up: (on) => up(on, database) }]),
  );
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => steps },
    migrationTableName: TABLE,
    migrationLockTableName: `${TABLE}_lock`,
  });
  const { error } = await migrator.migrateToLatest();
  if (error instanceof Error) throw error;
  if (error !== undefined) throw new Error("migration requires no failure, got one", { cause: error });
}

/** Names of the steps taken, oldest first. Asked first and cheaply, because nearly every start has nothing to do. */
async function stepsDone(db: Kysely<Database>, database: Store["database"]): Promise<readonly string[]> {
  const table =
    database === "sqlite"
      ? sql<{ there: string | null }>`select max(name) as there from sqlite_master where name = ${TABLE}`
      : sql<{ there: string | null }>`select to_regclass(${TABLE})::text as there`;
  const [found] = (await table.execute(db)).rows;
  if (!found?.there) return [];
  const done = await sql<{ name: string }>`select name from ${sql.table(TABLE)} order by name`.execute(db);
  return done.rows.map(({ name }) => name);
}
