import { type DBSchema, type IDBPDatabase, openDB } from "idb";

interface Pages extends DBSchema {
  readonly pages: {
    readonly key: string;
    readonly value: { readonly key: string; readonly at: number; readonly answer: unknown };
    readonly indexes: { readonly at: number };
  };
}

/** The pages last opened; older ones are forgotten. */
const MOST = 40;

let opened: Promise<IDBPDatabase<Pages> | null> | null = null;

/** Null where the browser has none to give (a private window, say): then pages open with the network only. */
function database(): Promise<IDBPDatabase<Pages> | null> {
  opened ??= openDB<Pages>("partsproof-pages", 1, {
    upgrade: (db) => void db.createObjectStore("pages", { keyPath: "key" }).createIndex("at", "at"),
    terminated: () => {
      opened = null;
    },
  }).catch(() => null);
  return opened;
}

/** Keeps what a page was made of, and no more pages than that. */
export async function keepPage(key: string, answer: unknown): Promise<void> {
  const db = await database();
  if (db === null) return;
  try {
    const write = db.transaction("pages", "readwrite");
    await write.store.put({ key, at: Date.now(), answer });
    let over = (await write.store.count()) - MOST;
    for (
      let oldest = await write.store.index("at").openKeyCursor();
      oldest !== null && over > 0;
      // oxlint-disable-next-line no-await-in-loop -- a cursor goes on one by one
      oldest = await oldest.continue()
    ) {
      // oxlint-disable-next-line no-await-in-loop -- a cursor goes on one by one
      await write.store.delete(oldest.primaryKey);
      over -= 1;
    }
    await write.done;
  } catch {
    // No room: the page opens with the network only.
  }
}

export async function keptPage(key: string): Promise<unknown> {
  const db = await database();
  return (await db?.get("pages", key).catch(() => undefined))?.answer;
}

/** One page that may be read no longer, or all. */
export async function forgetPages(key?: string): Promise<void> {
  const db = await database();
  await (key === undefined ? db?.clear("pages") : db?.delete("pages", key))?.catch(() => undefined);
}
