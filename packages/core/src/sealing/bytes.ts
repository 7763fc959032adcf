/**
 * The UTF-8 bytes of a text (RFC 3629, 3). Core has no TextEncoder; a text with half a surrogate pair has no UTF-8 form.
 *
 * Every entry of every sheet goes through here, so nothing is made on the way but the bytes.
 *
 * @throws RangeError for such a text
 * @example utf8("é") // Uint8Array [0xc3, 0xa9]
 */
export function utf8(text: string): Uint8Array {
  if (!text.isWellFormed())
    throw new RangeError("a sealed text requires whole characters, got half a surrogate pair");
  // A UTF-16 unit takes three bytes at most: what takes four is two units.
  const bytes = new Uint8Array(text.length * 3);
  let end = 0;
  /** Six bits of a character that began in an earlier byte. */
  const go = (bits: number): void => {
    bytes[end++] = 0x80 | (bits & 0x3f);
  };
  for (let i = 0; i < text.length; i += 1) {
    const point = text.codePointAt(i) ?? 0;
    if (point < 0x80) bytes[end++] = point;
    else if (point < 0x800) {
      bytes[end++] = 0xc0 | (point >> 6);
      go(point);
    } else if (point < 0x10000) {
      bytes[end++] = 0xe0 | (point >> 12);
      go(point >> 6);
      go(point);
    } else {
      i += 1;
      bytes[end++] = 0xf0 | (point >> 18);
      go(point >> 12);
      go(point >> 6);
      go(point);
    }
  }
  return bytes.slice(0, end);
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
