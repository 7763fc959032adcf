import type { House } from "./ports.ts";

/**
 * A hash under a key that is kept outside the database (HMAC-SHA-256, RFC 2104, its key from the seal key by HKDF,
 * RFC 5869), as hex: who holds the database alone can neither try texts out on it nor compute it.
 *
 * @param purpose a word of its own for each use, so that no two uses share a key
 */
export async function keyedHash(
  house: Pick<House, "sealKey">,
  purpose: string,
  text: string,
): Promise<string> {
  const signed = await crypto.subtle.sign(
    "HMAC",
    await keyFor(house, purpose),
    new TextEncoder().encode(text),
  );
  return [...new Uint8Array(signed)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

const keys = new WeakMap<Uint8Array, Map<string, Promise<CryptoKey>>>();

function keyFor({ sealKey }: Pick<House, "sealKey">, purpose: string): Promise<CryptoKey> {
  const known = keys.get(sealKey) ?? new Map<string, Promise<CryptoKey>>();
  keys.set(sealKey, known);
  const key = known.get(purpose) ?? derived(sealKey, purpose);
  known.set(purpose, key);
  return key;
}

async function derived(sealKey: Uint8Array, purpose: string): Promise<CryptoKey> {
  const root = await crypto.subtle.importKey("raw", new Uint8Array(sealKey), "HKDF", false, ["deriveKey"]);
  const info = new TextEncoder().encode(purpose);
  return crypto.subtle.deriveKey(
    { name: "HKDF", hash: "SHA-256", salt: new Uint8Array(), info },
    root,
    { name: "HMAC", hash: "SHA-256", length: 256 },
    false,
    ["sign"],
  );
}
