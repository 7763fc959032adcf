import { randomBytes } from "node:crypto";
import pg from "pg";

const HOUR_MS = 3_600_000;
const OURS = /^house_test_(\d+)_[0-9a-f]+$/;

let swept: Promise<void> | undefined;

/** A new empty database in the PostgreSQL of TEST_DATABASE_URL. */
export async function createPostgres(): Promise<string> {
  swept ??= sweep();
  await swept;
  const place = new URL(server());
  const name = `house_test_${Date.now()}_${randomBytes(6).toString("hex")}`;
  await onPostgres(server(), (client) => client.query(`create database ${name} template template0`));
  place.pathname = `/${name}`;
  return place.href;
}

export async function dropPostgres(place: string): Promise<void> {
  const name = new URL(place).pathname.slice(1);
  await onPostgres(server(), (client) => client.query(`drop database if exists ${name} with (force)`));
}

/** Takes every row out of a house's tables and leaves the tables. */
export async function emptyPostgres(place: string): Promise<void> {
  await onPostgres(place, async (client) => {
    const { rows } = await client.query<{ name: string }>(
      "select quote_ident(tablename) as name from pg_tables where schemaname = 'public' and tablename not like 'house_migration%'",
    );
    // One transaction, because tables that name each other are checked at its end.
    await client.query(
      ["set lock_timeout = 5000", ...rows.map(({ name }) => `delete from ${name}`)].join(";"),
    );
  });
}

/** Test processes that were killed left their databases behind; an hour later nobody uses them. */
async function sweep(): Promise<void> {
  await onPostgres(server(), async (client) => {
    const { rows } = await client.query<{ name: string }>("select datname as name from pg_database");
    for (const { name } of rows) {
      const made = Number(OURS.exec(name)?.[1] ?? Number.POSITIVE_INFINITY);
      // Another test process may sweep at the same time, or still be in it after all.
      if (made < Date.now() - HOUR_MS) {
        await client.query(`drop database if exists ${name}`).catch(() => undefined);
      }
    }
  });
}

function server(): string {
  const url = process.env["TEST_DATABASE_URL"];
  if (url) return url;
  throw new Error(
    "tests on PostgreSQL require TEST_DATABASE_URL, got none: `npm test` sets it; " +
      "`npm run postgres` starts a server and prints one",
  );
}

async function onPostgres(place: string, work: (client: pg.Client) => Promise<unknown>): Promise<void> {
  const client = new pg.Client({ connectionString: place });
  await client.connect();
  try {
    await work(client);
  } finally {
    await client.end();
  }
}
