import { readFileSync, writeFileSync } from "node:fs";
import { openDatabase } from "@partsproof/server";
import type { DatabaseName } from "./databases.ts";
import { emptyPostgres } from "./postgres.ts";
import { type TemporaryDatabase, temporaryDatabase } from "./temporary-database.ts";

const shelf: TemporaryDatabase[] = [];
let blank: Promise<Uint8Array> | undefined;

/**
 * A database without rows that nobody else has while it is borrowed. Making its tables takes SQLite 20 ms of the processor and
 * PostgreSQL half a second, so this process makes one file and copies it, and empties the
 * PostgreSQL databases it got back and lends them again. A test that changes tables makes its own instead.
 */
export async function borrowDatabase(database: DatabaseName): Promise<TemporaryDatabase> {
  if (database === "sqlite") return copyOfBlank();
  const lent = shelf.pop() ?? (await temporaryDatabase(database));
  return {
    place: lent.place,
    remove: async () => {
      try {
        await emptyPostgres(lent.place);
        shelf.push(lent);
      } catch (error) {
        await lent.remove();
        throw error;
      }
    },
  };
}

async function copyOfBlank(): Promise<TemporaryDatabase> {
  blank ??= makeBlank();
  const [bytes, copy] = [await blank, await temporaryDatabase("sqlite")];
  writeFileSync(copy.place, bytes);
  return copy;
}

/** A file with tables and no rows; once closed it is whole, without the log beside it. */
async function makeBlank(): Promise<Uint8Array> {
  const made = await temporaryDatabase("sqlite");
  const { store } = await openDatabase(made.place);
  await store.close();
  const bytes = readFileSync(made.place);
  await made.remove();
  return bytes;
}
