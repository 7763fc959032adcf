import { randomBytes } from "node:crypto";
import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readFileSync,
  unlinkSync,
  writeSync,
} from "node:fs";
import { join } from "node:path";

const FILE = "seal.key";

export interface SealKeyPlace {
  readonly folder: string;
  /** PARTSPROOF_SEAL_KEY, if it is set. */
  readonly given?: string | undefined;
  /** The database that the key belongs to, if it is a file. */
  readonly databaseFile?: string;
}

/**
 * The 32 bytes that seal flights. Kept beside the database and not in it, so that neither a copy of the database nor
 * an export opens a flight before its reveal. Made at the first start.
 */
export function readSealKey({ folder, given, databaseFile }: SealKeyPlace): Uint8Array {
  if (given !== undefined && given !== "") return parse("PARTSPROOF_SEAL_KEY", given);
  const file = join(folder, FILE);
  if (!existsSync(file)) {
    if (databaseFile !== undefined && existsSync(databaseFile)) {
      throw new Error(
        `seal key requires the file it was kept in beside ${databaseFile}, got no ${file}. ` +
          "Put it back; or, giving up the flights that are not revealed yet, write 64 new hex digits into it",
      );
    }
    create(folder, file);
  }
  return parse(file, readFileSync(file, "utf8"));
}

function parse(place: string, text: string): Uint8Array {
  // What was received is not told: it may be all but the last digit of the key.
  if (!/^\s*[0-9a-f]{64}\s*$/i.test(text)) {
    throw new Error(`${place} requires 64 hex digits, got ${text.trim().length} characters that are not`);
  }
  return new Uint8Array(Buffer.from(text.trim(), "hex"));
}

/** Written whole beside its place and then linked into it: nobody ever reads half a key, and of two processes one wins. */
function create(folder: string, file: string): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const draft = `${file}.${process.pid}.${randomBytes(4).toString("hex")}`;
  const written = openSync(draft, "wx", 0o600);
  try {
    writeSync(written, `${randomBytes(32).toString("hex")}\n`);
    fsyncSync(written);
  } finally {
    closeSync(written);
  }
  try {
    linkSync(draft, file);
  } catch (error) {
    if (!(error instanceof Error && "code" in error && error.code === "EEXIST")) throw error;
  } finally {
    unlinkSync(draft);
  }
  syncFolder(folder);
}

/** A new name in a folder lasts only once the folder itself is written. Windows cannot open one and does not need to. */
function syncFolder(folder: string): void {
  if (process.platform === "win32") return;
  const opened = openSync(folder, "r");
  try {
    fsyncSync(opened);
  } finally {
    closeSync(opened);
  }
}
