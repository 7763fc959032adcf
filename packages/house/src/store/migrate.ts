import { type Kysely, sql } from "kysely";
import { type Migration, Migrator } from "kysely/migration";
import type { Store } from "../services/index.ts";
import { type Migrations, migrations } from "./migrations/index.ts";
import type { Database } from "./query.ts";
import { serializable } from "./transaction.ts";

const TABLE = "house_migration";

/**
 * Brings the tables to the newest version, or to `upTo`, all or nothing. Forward only: a store that a newer version
 * of the house has changed is refused.
 */
export async function migrate(
  db: Kysely<Database>,
  database: Store["database"],
  upTo: string | null = null,
  known: Migrations = migrations,
): Promise<void> {
  await refuseNewer(db, Object.keys(known));
  if (database === "postgresql") return run(db, database, upTo, known);
  // Kysely does not count on SQLite's transactional DDL, so the transaction is ours.
  await serializable(db, database, (connection) => run(connection, database, upTo, known));
}

async function run(
  db: Kysely<Database>,
  database: Store["database"],
  upTo: string | null,
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
  const { error } = await (upTo === null ? migrator.migrateToLatest() : migrator.migrateTo(upTo));
  if (error !== undefined) throw error;
}

async function refuseNewer(db: Kysely<Database>, known: readonly string[]): Promise<void> {
  const present = await db.introspection.getTables();
  if (!present.some(({ name }) => name === TABLE)) return;
  const done = await db.selectFrom(TABLE).select(sql<string>`name`.as("name")).orderBy("name").execute();
  const newest = done.findLast(({ name }) => !known.includes(name))?.name;
  if (newest !== undefined) {
    throw new Error(
      `store requires tables of version ${known.at(-1)} or older, got ${newest}: a newer version of Parts & Proof has changed this database, open it with that version`,
    );
  }
}
