import type { House } from "../ports.ts";

/** Plain text fills whole blocks of this many bytes, so that the length of what is sealed tells nothing about it. */
const BLOCK_BYTES = 16_384;
const IV_BYTES = 12;
const LENGTH_BYTES = 4;

type Sealer = Pick<House, "random" | "sealKey">;

const keyOf = (house: Pick<House, "sealKey">) =>
  crypto.subtle.importKey("raw", owned(house.sealKey), "AES-GCM", false, ["encrypt", "decrypt"]);

/**
 * Encrypts a text under the house's seal key: base64url of the nonce and the ciphertext with its tag.
 * AES-256-GCM (NIST SP 800-38D) with a fresh 96-bit nonce from the house's source of random bytes.
 *
 * @param plain any text
 * @param aad what the ciphertext belongs to, such as a flight's id: under another one it does not open
 */
export async function seal(house: Sealer, plain: string, aad: string): Promise<string> {
  const text = new TextEncoder().encode(plain);
  const blocks = Math.ceil((LENGTH_BYTES + text.length) / BLOCK_BYTES);
  const padded = new Uint8Array(blocks * BLOCK_BYTES);
  new DataView(padded.buffer).setUint32(0, text.length);
  padded.set(text, LENGTH_BYTES);
  const iv = owned(house.random.bytes(IV_BYTES));
  const sealed = await crypto.subtle.encrypt(gcm(iv, aad), await keyOf(house), padded);
  const whole = new Uint8Array(IV_BYTES + sealed.byteLength);
  whole.set(iv);
  whole.set(new Uint8Array(sealed), IV_BYTES);
  return base64url(whole);
}

/** The text, or null where it was sealed under another key, for something else, or has been touched since. */
export async function unseal(
  house: Pick<House, "sealKey">,
  sealed: string,
  aad: string,
): Promise<string | null> {
  const whole = fromBase64url(sealed);
  if (whole === null || whole.length < IV_BYTES) return null;
  try {
    const iv = whole.slice(0, IV_BYTES);
    const padded = await crypto.subtle.decrypt(gcm(iv, aad), await keyOf(house), whole.slice(IV_BYTES));
    const length = new DataView(padded).getUint32(0);
    return new TextDecoder().decode(new Uint8Array(padded, LENGTH_BYTES, length));
  } catch {
    // WebCrypto says only that it failed, and no more may be said: a wrong key and a changed text look alike.
    return null;
  }
}

const gcm = (iv: Uint8Array<ArrayBuffer>, aad: string) => ({
  name: "AES-GCM",
  iv,
  additionalData: new TextEncoder().encode(aad),
});

/** WebCrypto takes no view of shared memory; a copy is none. */
const owned = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(bytes);

function base64url(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

function fromBase64url(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    const binary = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    return Uint8Array.from(binary, (char) => char.charCodeAt(0));
  } catch {
    return null;
  }
}
