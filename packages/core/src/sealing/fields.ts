import { textOf, utf8 } from "./bytes.ts";

const COMMA = 0x2c;

/**
 * A list of fields as bytes: each field is its length in bytes in decimal, a colon, its bytes and a comma. Two different lists
 * never give the same bytes, whatever the fields hold.
 *
 * Source of the form: Bernstein, "Netstrings", 1997 (public domain), from memory.
 *
 * @example fieldBytes(["ab", ""]) // the bytes of "2:ab,0:,"
 */
export function fieldBytes(fields: readonly (string | number | Uint8Array)[]): Uint8Array {
  const bytes = fields.map((field) => (field instanceof Uint8Array ? field : utf8(String(field))));
  const lengths = bytes.map(({ length }) => utf8(`${length}:`));
  const all = new Uint8Array([...bytes, ...lengths].reduce((sum, { length }) => sum + length, fields.length));
  let at = 0;
  for (const [i, field] of bytes.entries()) {
    const length = lengths[i] ?? new Uint8Array();
    all.set(length, at);
    all.set(field, at + length.length);
    at += length.length + field.length;
    all[at] = COMMA;
    at += 1;
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
    if (text === null || bytes[end] !== COMMA) return { brokenAt: at };
    fields.push(text);
    at = end + 1;
  }
  return { fields };
}
