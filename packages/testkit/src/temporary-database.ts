import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { DatabaseName } from "./databases.ts";
import { createPostgres, dropPostgres } from "./postgres.ts";

export interface TemporaryDatabase {
  /** A file's path or a postgres:// address, as `openDatabase` takes it. */
  readonly place: string;
  remove(): Promise<void>;
}

/** An empty database of its own: a new SQLite file, or a new database in the PostgreSQL of TEST_DATABASE_URL. */
export async function temporaryDatabase(database: DatabaseName): Promise<TemporaryDatabase> {
  if (database === "postgresql") {
    const place = await createPostgres();
    return { place, remove: () => dropPostgres(place) };
  }
  const folder = mkdtempSync(join(tmpdir(), "partsproof-house-"));
  return {
    place: join(folder, "house.db"),
    remove: async () => rmSync(folder, { recursive: true, force: true }),
  };
}
