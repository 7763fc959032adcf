import type { Store } from "@partsproof/house/services";
import { createStore } from "@partsproof/house/store";
import { openDialect } from "./dialect.ts";

export interface OpenedDatabase {
  readonly store: Store;
  /** For the start line: which database and where, without a password. */
  readonly says: string;
}

/** Opens the store in `postgres://…`, or in an SQLite file, with its tables brought up to date. */
export async function openDatabase(place: string): Promise<OpenedDatabase> {
  const { dialect, database, says } = await openDialect(place);
  return { store: await createStore({ dialect, database }), says };
}
