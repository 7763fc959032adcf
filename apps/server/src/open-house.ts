import { createHash, randomBytes } from "node:crypto";
import { join } from "node:path";
import { type OpenHouse, openHouse } from "@partsproof/house";
import { type Clock, hasOwner, type Random } from "@partsproof/house/services";
import { dataFolder } from "./data-folder.ts";
import { openDatabase } from "./database.ts";
import { createPassphrases } from "./passphrases.ts";
import { readSealKey } from "./seal-key.ts";
import { searchThreads } from "./search-threads.ts";

export interface OpenedHouse extends OpenHouse {
  readonly dataFolder: string;
  /** Which database and where, without a password. */
  readonly database: string;
  /** Whether an owner's passphrase is set. */
  hasOwner(): Promise<boolean>;
  /** For recovery files alone: what seals flights here. */
  readonly sealKey: Uint8Array;
}

const clock: Clock = { now: () => new Date() };
const random: Random = { bytes: (count) => new Uint8Array(randomBytes(count)) };

/** At once and not by WebCrypto, which only promises. */
export const sha256 = (bytes: Uint8Array): Uint8Array =>
  new Uint8Array(createHash("sha256").update(bytes).digest());

/** The house of a data folder, in this process: the same file, the same key and the same door as the server's. */
export function openEmbeddedHouse(folder: string): Promise<OpenedHouse> {
  return open(folder, null, undefined);
}

/** The house that PARTSPROOF_DATA, DATABASE_URL and PARTSPROOF_SEAL_KEY name. */
export function openHouseFromEnvironment(env: NodeJS.ProcessEnv): Promise<OpenedHouse> {
  return open(dataFolder(env), env["DATABASE_URL"] || null, env["PARTSPROOF_SEAL_KEY"]);
}

async function open(folder: string, url: string | null, given: string | undefined): Promise<OpenedHouse> {
  const file = join(folder, "house.db");
  const sealKey = readSealKey({ folder, given, ...(url === null ? { databaseFile: file } : {}) });
  const { store, says } = await openDatabase(url ?? file);
  const searching = searchThreads();
  const passphrases = createPassphrases();
  const house = openHouse({ store, clock, random, sealKey, sha256, passphrases, searching });
  const close = async (): Promise<void> => {
    await searching.close();
    await house.close();
  };
  return {
    ...house,
    close,
    dataFolder: folder,
    database: says,
    hasOwner: () => hasOwner({ store }),
    sealKey,
  };
}
