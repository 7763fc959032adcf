import { mkdir, open, readdir, rename, unlink } from "node:fs/promises";
import { join } from "node:path";
import { type Client, createClient, type Door, type Household } from "@partsproof/house/protocol";

/** How often households are copied into files, and how many of each are kept. */
export interface BackupSettings {
  readonly keep: number;
  readonly hours: number;
}

const HOUR_MS = 3_600_000;
const MOST = 1000;

/** PARTSPROOF_BACKUPS (how many of each household are kept; none where it is not set) and PARTSPROOF_BACKUP_HOURS (24). */
export function readBackups(env: NodeJS.ProcessEnv): BackupSettings | null {
  const keep = whole("PARTSPROOF_BACKUPS", env["PARTSPROOF_BACKUPS"] || "0", 0);
  const hours = whole("PARTSPROOF_BACKUP_HOURS", env["PARTSPROOF_BACKUP_HOURS"] || "24", 1);
  return keep === 0 ? null : { keep, hours };
}

function whole(name: string, text: string, least: number): number {
  const value = Number(text);
  if (/^\d{1,4}$/.test(text) && value >= least && value <= MOST) return value;
  throw new Error(`${name} requires a whole number from ${least} to ${MOST}, got ${text}`);
}

/** A file of a household: its id, then when, so that names sort by age. */
const nameOf = (household: string, at: Date): string =>
  `${household}.${at.toISOString().replaceAll(":", "")}.json`;
const NAME = /^([0-9a-z]{26})\.(\d{4}-\d\d-\d\dT\d{6}\.\d{3}Z)\.json$/;

/**
 * Every household that has none from the last hours as a file in the folder, written whole or not at all, and the oldest beyond `keep` taken
 * away. A file that is no backup is left alone.
 *
 * @returns the files written
 */
export async function backUp(
  door: Door,
  folder: string,
  { keep, hours }: BackupSettings,
  now: Date,
): Promise<readonly string[]> {
  const client = createClient(door, "http://house.invalid");
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const written: string[] = [];
  for (const { id } of await everyHousehold(client)) {
    const kept = (await readdir(folder)).filter((name) => NAME.exec(name)?.[1] === id).toSorted();
    const last = momentOf(kept.at(-1));
    if (last !== null && now.getTime() - last < hours * HOUR_MS) continue;
    const archive = await client("exportHousehold", { at: { household: id } });
    const file = join(folder, nameOf(id, now));
    await writeSynced(file, `${JSON.stringify(archive)}\n`);
    written.push(file);
    for (const old of kept.slice(0, Math.max(0, kept.length + 1 - keep))) await unlink(join(folder, old));
  }
  return written;
}

async function everyHousehold(client: Client): Promise<readonly Household[]> {
  const all: Household[] = [];
  for (let cursor: string | null | undefined; cursor !== null; ) {
    const page = await client("listHouseholds", { query: cursor === undefined ? {} : { cursor } });
    all.push(...page.items);
    cursor = page.next;
  }
  return all;
}

function momentOf(name: string | undefined): number | null {
  const at = NAME.exec(name ?? "")?.[2];
  if (at === undefined) return null;
  return Date.parse(at.replace(/T(\d\d)(\d\d)(\d\d)/, "T$1:$2:$3"));
}

async function writeSynced(file: string, text: string): Promise<void> {
  const draft = `${file}.part`;
  const handle = await open(draft, "w", 0o600);
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
  await rename(draft, file);
}
