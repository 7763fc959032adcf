import { randomBytes, scrypt, timingSafeEqual } from "node:crypto";
import type { Passphrases } from "@partsproof/house/services";

export interface ScryptCost {
  readonly N: number;
  readonly r: number;
  readonly p: number;
}

/**
 * OWASP Password Storage Cheat Sheet (2025), scrypt: "N=2^17 (128 MiB), r=8 (1024 bytes), p=1".
 * https://cheatsheetseries.owasp.org/cheatsheets/Password_Storage_Cheat_Sheet.html#scrypt
 * Node's own Argon2 would come first there, but is not called stable in Node 24.
 */
export const COST: ScryptCost = { N: 2 ** 17, r: 8, p: 1 };
const SALT_BYTES = 16;
const HASH_BYTES = 32;

interface Stored extends ScryptCost {
  readonly salt: Buffer;
  readonly hash: Buffer;
}

/**
 * scrypt (RFC 7914), its parameters and salt beside each hash, so that they may be raised later.
 *
 * @param cost lower in tests only, which hash often
 */
export function createPassphrases(cost: ScryptCost = COST): Passphrases {
  /** Compared with where nothing is stored, so that the time does not tell. */
  const nobody: Stored = { ...cost, salt: Buffer.alloc(SALT_BYTES), hash: Buffer.alloc(HASH_BYTES) };
  return {
    hash: async (passphrase) => {
      const salt = randomBytes(SALT_BYTES);
      const hash = await derived(passphrase, { ...cost, salt });
      const { N, r, p } = cost;
      return ["scrypt", N, r, p, salt.toString("base64url"), hash.toString("base64url")].join(":");
    },
    fits: async (passphrase, stored) => {
      const known = stored === null ? null : parsed(stored);
      const { hash, ...how } = known ?? nobody;
      const same = timingSafeEqual(await derived(passphrase, how), hash);
      return same && known !== null;
    },
  };
}

function parsed(stored: string): Stored | null {
  const [kind, N, r, p, salt = "", hash = ""] = stored.split(":");
  const known = { N: Number(N), r: Number(r), p: Number(p) };
  const bytes = Buffer.from(hash, "base64url");
  if (kind !== "scrypt" || bytes.length !== HASH_BYTES || !Object.values(known).every(Number.isSafeInteger)) {
    return null;
  }
  return { ...known, salt: Buffer.from(salt, "base64url"), hash: bytes };
}

const derived = (passphrase: string, { N, r, p, salt }: Omit<Stored, "hash">): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    // scrypt needs 128 N r bytes and a little more; Node refuses above 32 MiB unless told.
    scrypt(passphrase, salt, HASH_BYTES, { N, r, p, maxmem: 160 * N * r }, (error, key) =>
      error ? reject(error) : resolve(key),
    );
  });
