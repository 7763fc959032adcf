import type { Rng } from "../statistics/index.ts";
import { hex } from "./bytes.ts";
import { fieldBytes } from "./fields.ts";
import { requireSha256, type Sha256 } from "./sha256.ts";

/** Random bytes in a nonce or salt drawn here: 256 bits, twice what is required. */
export const NONCE_BYTES = 32;
/** The fewest random bytes that are taken: 128 bits. */
export const LEAST_NONCE_BYTES = 16;

const FORM = "parts-and-proof/commitment/1";

/**
 * Random bytes for a nonce or a salt. The nonce of a flight is drawn before its codes: drawn after, it could be chosen to suit
 * them. Chance comes from the caller and must be fit for secrets (`crypto.getRandomValues`).
 */
export const drawNonce = (rng: Rng): Uint8Array =>
  Uint8Array.from({ length: NONCE_BYTES }, () => rng.below(256));

export function requireNonce(nonce: Uint8Array): void {
  if (nonce.length < LEAST_NONCE_BYTES) {
    throw new RangeError(
      `a nonce requires at least ${8 * LEAST_NONCE_BYTES} bits, got ${8 * nonce.length} bits`,
    );
  }
}

/**
 * The commitment to a key: SHA-256 over the fields form name, nonce, key, in lower-case hexadecimal (64 digits, 256 bits).
 *
 * It hides the key as long as the nonce is secret and random: the few keys that an evening can have are quickly gone through,
 * 2¹²⁸ nonces are not. It binds: another key or nonce with the same digest would be a collision of SHA-256.
 *
 * @param key canonical bytes (`keyBytes`)
 * @throws RangeError for a nonce below 128 bits; TypeError when `sha256` is not SHA-256
 */
export function commitmentTo(key: Uint8Array, nonce: Uint8Array, sha256: Sha256): string {
  requireNonce(nonce);
  requireSha256(sha256);
  return hex(sha256(fieldBytes([FORM, nonce, key])));
}
