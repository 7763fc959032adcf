import { hex } from "./bytes.ts";
import { readFields } from "./fields.ts";
import { type FlightKey, KEY_FORM, KEY_FORM_SETS, keyBytes } from "./flight-key.ts";
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
  if (fields[0] !== KEY_FORM && fields[0] !== KEY_FORM_SETS) {
    const got = fields[0] ?? "nothing";
    const limit = `${KEY_FORM} or ${KEY_FORM_SETS}`;
    return no("key_form_unknown", limit, got, `a key requires the form ${limit}, got ${got}`);
  }
  const key = keyIn(fields, fields[0] === KEY_FORM_SETS);
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

/** What the fields say, taken at their word: whether they say it in the one way there is, is looked at afterwards. */
function keyIn(fields: readonly string[], sets: boolean): FlightKey {
  const at = (i: number): string => fields[i] ?? "";
  const glasses = Array.from({ length: Math.min(Number(at(2)) || 0, fields.length) }, (_, i) => ({
    glass: at(3 + 3 * i),
    vessel: at(4 + 3 * i),
    name: at(5 + 3 * i),
  }));
  const counted = 3 + 3 * glasses.length + Number(sets);
  const width = sets ? 5 : 4;
  const codes = Array.from({ length: Math.min(Number(at(counted)) || 0, fields.length) }, (_, i) => {
    const start = counted + 1 + width * i;
    const [turn = "", code = "", glass = ""] = fields.slice(start + width - 3, start + width);
    const set = sets ? { set: Number(at(start + 1)) } : {};
    return { sheet: at(start), ...set, turn: Number(turn), code, glass };
  });
  const expected = sets ? at(counted - 1) : "";
  return { flight: at(1), glasses, codes, ...(expected === "" ? {} : { expected }) };
}
