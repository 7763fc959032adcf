import type { Sheet } from "@partsproof/house/protocol";
import { forgetSheet } from "../../noting/index.ts";
import { type DBSchema, type IDBPDatabase, openDB } from "idb";

interface Sheets extends DBSchema {
  readonly sheets: { readonly key: string; readonly value: Sheet };
}

let opened: Promise<IDBPDatabase<Sheets> | null> | null = null;

function database(): Promise<IDBPDatabase<Sheets> | null> {
  opened ??= openDB<Sheets>("partsproof-sheets", 1, {
    upgrade: (db) => void db.createObjectStore("sheets"),
    terminated: () => {
      opened = null;
    },
  }).catch(() => null);
  return opened;
}

/**
 * The sheet as the house last told it, so that the page opens without a network. It is the taster's own: their numbers, the names
 * on offer, what they wrote. Nothing of the key is ever on it. Once the flight is over it is forgotten.
 */
export async function keepSheet(sheet: Sheet): Promise<void> {
  const db = await database();
  if (db === null) return;
  const over = sheet.flightState === "revealed" || sheet.flightState === "called off";
  if (over) forgetSheet(sheet.id);
  try {
    const write = db.transaction("sheets", "readwrite");
    // An answer that comes late must not put back what this phone has sent meanwhile.
    const last = await write.store.get(sheet.id);
    if (over) await write.store.delete(sheet.id);
    else if (last === undefined || last.version <= sheet.version) await write.store.put(sheet, sheet.id);
    await write.done;
  } catch {
    // No room, or a private window: the page opens with the network only.
  }
}

export async function keptSheet(id: string): Promise<Sheet | null> {
  const db = await database();
  const sheet = await db?.get("sheets", id).catch(() => undefined);
  // Kept by an earlier version, it says nothing of what came since.
  return sheet === undefined
    ? null
    : { ...sheet, strengths: sheet.strengths ?? [], typedBy: sheet.typedBy ?? null };
}
