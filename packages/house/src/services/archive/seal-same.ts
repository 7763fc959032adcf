import { seal } from "../flights/index.ts";
import type { House } from "../ports.ts";

/**
 * Sealed so that the same text gives the same ciphertext, and one export is byte for byte the next: the nonce is drawn from the text itself
 * by HMAC-SHA-256 under the house's key (a synthetic nonce, as in RFC 5297), so that two texts never share one but by a chance of 2^-48 at
 * millions of them.
 */
export async function sealSame(
  house: Pick<House, "sealKey" | "random">,
  plain: string,
  aad: string,
): Promise<string> {
  const hmac = { name: "HMAC", hash: "SHA-256" };
  const key = await crypto.subtle.importKey("raw", new Uint8Array(house.sealKey), hmac, false, ["sign"]);
  const text = new TextEncoder().encode(`nonce of an export\n${aad}\n${plain}`);
  const drawn = new Uint8Array(await crypto.subtle.sign("HMAC", key, text));
  return seal(
    { sealKey: house.sealKey, random: { ...house.random, bytes: (count) => drawn.slice(0, count) } },
    plain,
    aad,
  );
}
