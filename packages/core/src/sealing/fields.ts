import { textOf, utf8 } from "./bytes.ts";

/**
 * A list of fields as bytes: each field is its length in bytes in decimal, a colon, its bytes and a comma. Two different lists
 * never give the same bytes, whatever the fields hold.
 *
 * Source of the form: Bernstein, "Netstrings", 1997 (public domain), from memory.
 *
 * @example fieldBytes(["ab", ""]) // the bytes of "2:ab,0:,"
 */
export function fieldBytes(fields: readonly (string | number | Uint8Array)[]): Uint8Array {
  const parts = fields.flatMap((field) => {
    const bytes = field instanceof Uint8Array ? field : utf8(String(field));
    return [utf8(`${bytes.length}:`), bytes, utf8(",")];
  });
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** The texts of a list of fields, or the byte at which the bytes stop being one. */
export function readFields(
  bytes: Uint8Array,
): { readonly fields: readonly string[] } | { readonly brokenAt: number } {
  const fields: string[] = [];
  let at = 0;
  while (at < bytes.length) {
    const colon = bytes.indexOf(0x3a, at);
    const digits = colon < 0 ? null : textOf(bytes.subarray(at, colon));
    // No leading zero, no sign: a length has one form only.
    if (digits === null || !/^(?:0|[1-9]\d{0,8})$/.test(digits)) return { brokenAt: at };
    const end = colon + 1 + Number(digits);
    const text = textOf(bytes.subarray(colon + 1, end));
    if (text === null || bytes[end] !== 0x2c) return { brokenAt: at };
    fields.push(text);
    at = end + 1;
  }
  return { fields };
}
