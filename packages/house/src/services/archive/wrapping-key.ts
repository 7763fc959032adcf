/**
 * The key that one flight's sheets and glass key leave the house under: HMAC-SHA-256 of the flight's id under the house's seal key. No route gives
 * it: it leaves in a recovery file only, which is written by whoever holds the seal key itself.
 */
export async function wrappingKey(sealKey: Uint8Array, flightId: string): Promise<Uint8Array> {
  const hmac = { name: "HMAC", hash: "SHA-256" };
  const key = await crypto.subtle.importKey("raw", new Uint8Array(sealKey), hmac, false, ["sign"]);
  const text = new TextEncoder().encode(`wrapping key of flight ${flightId}`);
  return new Uint8Array(await crypto.subtle.sign("HMAC", key, text));
}

/** As a recovery file names it. */
export const keyOfText = (text: string): Uint8Array =>
  Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (char) => char.charCodeAt(0));
