import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { keep, kept } from "../../session/index.ts";
import type { Outbox } from "./keeper.ts";

interface Boxes extends DBSchema {
  readonly sheets: { readonly key: string; readonly value: Outbox };
}

let opened: Promise<IDBPDatabase<Boxes> | null> | null = null;

/** The phone's own database; null where the browser has none to give (a private window, say). */
function database(): Promise<IDBPDatabase<Boxes> | null> {
  opened ??= openDB<Boxes>("partsproof-outbox", 1, {
    upgrade: (db) => void db.createObjectStore("sheets"),
    terminated: () => {
      opened = null;
    },
  }).catch(() => null);
  return opened;
}

const name = (sheet: string): string => `unsaved.${sheet}`;
/** Writes one after the other, so that the last one said is the last one stored. */
let writes: Promise<unknown> = Promise.resolve();

/** What was written on a sheet and not confirmed by the house. */
export async function outboxOf(sheet: string): Promise<Outbox | null> {
  await writes;
  const db = await database();
  const found = await db?.get("sheets", sheet).catch(() => undefined);
  if (found !== undefined) return found;
  try {
    const text = JSON.parse(kept(name(sheet)) ?? "null") as Outbox | null;
    return text === null || !("unsaved" in text) ? null : text;
  } catch {
    return null;
  }
}

/** Stores it, or forgets it once the house has everything. Where there is no database, in the browser's smaller store. */
export function storeOutbox(sheet: string, outbox: Outbox | null): void {
  writes = writes.then(async () => {
    const db = await database();
    try {
      if (db === null) throw new Error("storing requires a database, got none");
      if (outbox === null) await db.delete("sheets", sheet);
      else await db.put("sheets", outbox, sheet);
      if (kept(name(sheet)) !== null) keep(name(sheet), null);
    } catch {
      keep(name(sheet), outbox === null ? null : JSON.stringify(outbox));
    }
  });
}
