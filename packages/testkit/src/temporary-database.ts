import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import type { DatabaseName } from "./databases.ts";

export interface TemporaryDatabase {
  /** A file's path or a postgres:// address, as `openDatabase` takes it. */
  readonly place: string;
  remove(): Promise<void>;
}

/** An empty database of its own: a new SQLite file, or a new database in the PostgreSQL of TEST_DATABASE_URL. */
export function temporaryDatabase(database: DatabaseName): Promise<TemporaryDatabase> {
  return database === "sqlite" ? temporaryFile() : temporaryPostgres();
}

async function temporaryFile(): Promise<TemporaryDatabase> {
  const folder = mkdtempSync(join(tmpdir(), "partsproof-house-"));
  return {
    place: join(folder, "house.db"),
    remove: async () => rmSync(folder, { recursive: true, force: true }),
  };
}

async function temporaryPostgres(): Promise<TemporaryDatabase> {
  const server = process.env["TEST_DATABASE_URL"];
  if (!server) {
    throw new Error(
      "tests on PostgreSQL require TEST_DATABASE_URL, got none: `npm test` sets it; `npm run postgres` starts a server and prints one",
    );
  }
  const name = `house_${randomBytes(8).toString("hex")}`;
  await administer(server, `create database ${name} template template0`);
  const place = new URL(server);
  place.pathname = `/${name}`;
  return {
    place: place.href,
    remove: () => administer(server, `drop database if exists ${name} with (force)`),
  };
}

async function administer(server: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: server });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
