import { type DBSchema, type IDBPDatabase, openDB } from "idb";

interface Photos extends DBSchema {
  readonly photos: {
    readonly key: string;
    readonly value: { readonly type: string; readonly bytes: ArrayBuffer };
  };
}

let opened: Promise<IDBPDatabase<Photos>> | null = null;

function database(): Promise<IDBPDatabase<Photos>> {
  opened ??= openDB<Photos>("partsproof-mats", 1, {
    upgrade: (db) => void db.createObjectStore("photos"),
    terminated: () => {
      opened = null;
    },
  });
  return opened;
}

/** Keeps the photo of a flight's mat in place of an earlier one. False where this browser keeps nothing. */
export async function keepPhoto(flight: string, photo: Blob): Promise<boolean> {
  try {
    const db = await database();
    await db.put("photos", { type: photo.type, bytes: await photo.arrayBuffer() }, flight);
    return true;
  } catch {
    return false;
  }
}

/** Whether there is one, without reading it. */
export async function hasPhoto(flight: string): Promise<boolean> {
  try {
    return (await (await database()).count("photos", flight)) > 0;
  } catch {
    return false;
  }
}

/** Only for a flight that is revealed: the caller has its finding in hand. */
export async function photoOf(flight: string): Promise<Blob | null> {
  try {
    const found = await (await database()).get("photos", flight);
    return found === undefined ? null : new Blob([found.bytes], { type: found.type });
  } catch {
    return null;
  }
}

export async function forgetPhoto(flight: string): Promise<void> {
  await (await database()).delete("photos", flight);
}
