import { unreadable } from "./problem.ts";

/** The body of a request, refused as soon as it is known to be longer than what is read of it. */
export async function bytesOf(request: Request, most: number): Promise<Uint8Array> {
  const tooLarge = (got: number) =>
    unreadable(413, "body_too_large", [], `at most ${most} bytes`, got, "request body");
  // HTTP itself holds a body to the length it states, and most state one.
  const stated = request.headers.get("content-length");
  if (stated !== null && Number(stated) > most) throw tooLarge(Number(stated));
  if (stated !== null || request.body === null) {
    const bytes = new Uint8Array(await request.arrayBuffer());
    if (bytes.byteLength > most) throw tooLarge(bytes.byteLength);
    return bytes;
  }
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = request.body.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    length += part.value.byteLength;
    if (length > most) {
      await reader.cancel();
      throw tooLarge(length);
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.byteLength;
  }
  return whole;
}
