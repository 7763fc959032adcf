import { hex } from "./bytes.ts";
import { readFields } from "./fields.ts";
import { type FlightKey, KEY_FORM, keyBytes } from "./flight-key.ts";
import type { Issue } from "./issue.ts";

const no = (code: string, limit: Issue["limit"], received: Issue["received"], message: string) => ({
  ok: false as const,
  issue: { code, path: ["key"], limit, received, message },
});

/**
 * A key read back from its canonical bytes. Only bytes that `keyBytes` gives are taken: any other order, form of a number or
 * left-over is refused, so that a key has one form and a form one key.
 */
export function readFlightKey(
  bytes: Uint8Array,
): { readonly ok: true; readonly key: FlightKey } | { readonly ok: false; readonly issue: Issue } {
  const read = readFields(bytes);
  if (!("fields" in read)) {
    const at = `byte ${read.brokenAt}`;
    return no(
      "key_unreadable",
      "length, colon, text, comma",
      at,
      `a key requires whole fields, got a break at ${at}`,
    );
  }
  const { fields } = read;
  if (fields[0] !== KEY_FORM) {
    const got = fields[0] ?? "nothing";
    return no("key_form_unknown", KEY_FORM, got, `a key requires the form ${KEY_FORM}, got ${got}`);
  }
  const at = (i: number): string => fields[i] ?? "";
  const glasses = Array.from({ length: Math.min(Number(at(2)) || 0, fields.length) }, (_, i) => ({
    glass: at(3 + 3 * i),
    vessel: at(4 + 3 * i),
    name: at(5 + 3 * i),
  }));
  const start = 3 + 3 * glasses.length;
  const codes = Array.from({ length: Math.min(Number(at(start)) || 0, fields.length) }, (_, i) => ({
    sheet: at(start + 1 + 4 * i),
    turn: Number(at(start + 2 + 4 * i)),
    code: at(start + 3 + 4 * i),
    glass: at(start + 4 + 4 * i),
  }));
  const key = { flight: at(1), glasses, codes };
  try {
    if (hex(keyBytes(key)) === hex(bytes)) return { ok: true, key };
  } catch {
    // What cannot be written cannot have been read: the refusal below says so.
  }
  return no(
    "key_not_canonical",
    "the form keyBytes gives",
    null,
    "a key requires its canonical form, got another",
  );
}
