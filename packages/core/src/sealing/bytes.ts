/**
 * The UTF-8 bytes of a text. Core has no TextEncoder; a text with half a surrogate pair has no UTF-8 form.
 *
 * @throws RangeError for such a text
 * @example utf8("é") // Uint8Array [0xc3, 0xa9]
 */
export function utf8(text: string): Uint8Array {
  if (!text.isWellFormed())
    throw new RangeError("a sealed text requires whole characters, got half a surrogate pair");
  const escaped = encodeURIComponent(text).match(/%..|[^%]/g) ?? [];
  return Uint8Array.from(escaped, (mark) =>
    mark.length === 3 ? Number.parseInt(mark.slice(1), 16) : mark.charCodeAt(0),
  );
}

/** The text of UTF-8 bytes, or null when they are none. */
export function textOf(bytes: Uint8Array): string | null {
  try {
    return decodeURIComponent(Array.from(bytes, (byte) => `%${byte.toString(16).padStart(2, "0")}`).join(""));
  } catch {
    return null;
  }
}

/** Lower-case hexadecimal digits, two a byte. */
export const hex = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");

/** The bytes of lower-case hexadecimal digits, or null: capitals are refused, so that a byte has one form only. */
export const bytesOfHex = (digits: string): Uint8Array | null =>
  /^(?:[0-9a-f]{2})*$/.test(digits)
    ? Uint8Array.from(digits.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))
    : null;
