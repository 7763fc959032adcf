import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { key, play } from "./fixtures/evening.ts";
import { fieldBytes } from "./fields.ts";
import { hex, KEY_FORM, KEY_FORM_SETS, keyBytes, readFlightKey, readRecord, utf8 } from "./index.ts";

const sha256 = (bytes: Uint8Array): Uint8Array => new Uint8Array(createHash("sha256").update(bytes).digest());

test("S1 a key that contradicts itself throws and names what", () => {
  const [glass] = key.glasses;
  const [code] = key.codes;
  if (!glass || !code) throw new Error("empty key");
  const bytes = (change: Partial<typeof key>) => () => keyBytes({ ...key, ...change });
  expect(bytes({ glasses: [...key.glasses, glass] })).toThrow(
    "a flight's key requires every glass once, got 1 again",
  );
  expect(bytes({ codes: [...key.codes, { ...code, code: "999" }] })).toThrow("got turn 1 of ann again");
  expect(bytes({ codes: [...key.codes, { ...code, turn: 9 }] })).toThrow("got code 482 of ann again");
  expect(bytes({ codes: [{ ...code, turn: 0 }] })).toThrow("whole turns from 1, got 0");
  expect(bytes({ codes: [{ ...code, glass: "7" }] })).toThrow(
    "requires the glass of code 482 to be in it, got 7",
  );
});

const inPairs = {
  ...key,
  expected: "3",
  codes: [
    { sheet: "ann", set: 2, turn: 1, code: "305", glass: "3" },
    { sheet: "ann", set: 1, turn: 2, code: "719", glass: "3" },
    { sheet: "ann", set: 1, turn: 1, code: "R", glass: "2" },
  ],
};

test("S1 a key without sets has the bytes it had before there were sets, one with sets those of the second form", () => {
  const glasses = key.glasses.flatMap(({ glass, vessel, name }) => [glass, vessel, name]);
  const first = key.codes.slice(0, 2).flatMap(({ sheet, turn, code, glass }) => [sheet, turn, code, glass]);
  expect(hex(keyBytes({ ...key, codes: key.codes.slice(0, 2) }))).toBe(
    hex(fieldBytes(["parts-and-proof/flight-key/1", "winter-1", 3, ...glasses, 2, ...first])),
  );
  const rows = ["ann", 1, 1, "R", "2", "ann", 1, 2, "719", "3", "ann", 2, 1, "305", "3"];
  expect(hex(keyBytes(inPairs))).toBe(
    hex(fieldBytes(["parts-and-proof/flight-key/2", "winter-1", 3, ...glasses, "3", 3, ...rows])),
  );
});

test("S1 a key whose sets contradict themselves throws and names what", () => {
  const [code] = inPairs.codes;
  if (!code) throw new Error("empty key");
  const bytes = (change: Partial<typeof key>) => () => keyBytes({ ...inPairs, ...change });
  expect(bytes({ expected: "9" })).toThrow("requires the expected glass to be in it, got 9");
  expect(bytes({ expected: "" })).toThrow("requires the expected glass to be in it");
  expect(bytes({ codes: [...inPairs.codes, { ...code, code: "1" }] })).toThrow(
    "got turn 1 of set 2 of ann again",
  );
  expect(bytes({ codes: [...inPairs.codes, { ...code, turn: 2 }] })).toThrow("got code 305 of set 2 of ann");
  expect(bytes({ codes: [...inPairs.codes, ...key.codes] })).toThrow("whole sets from 1, got none");
  expect(bytes({ codes: [{ ...code, set: 0 }] })).toThrow("whole sets from 1, got 0");
});

test.each([
  ["cut short", utf8("5:ab"), "key_unreadable"],
  ["a length with a leading zero", utf8("02:ab,"), "key_unreadable"],
  ["no comma", utf8("2:ab;"), "key_unreadable"],
  ["no UTF-8", Uint8Array.from([0x31, 0x3a, 0xff, 0x2c]), "key_unreadable"],
  ["nothing", new Uint8Array(), "key_form_unknown"],
  ["a later form", fieldBytes(["parts-and-proof/flight-key/3"]), "key_form_unknown"],
  ["the form of sets without any", fieldBytes([KEY_FORM_SETS, "f", 0, "", 0]), "key_not_canonical"],
  ["a field too many", fieldBytes([KEY_FORM, "f", 0, 0, "more"]), "key_not_canonical"],
  ["glasses out of order", fieldBytes([KEY_FORM, "f", 2, "b", "", "", "a", "", "", 0]), "key_not_canonical"],
  [
    "a turn written another way",
    fieldBytes([KEY_FORM, "f", 1, "a", "", "", 1, "s", "1.0", "100", "a"]),
    "key_not_canonical",
  ],
  ["a huge count", fieldBytes([KEY_FORM, "f", "999999999"]), "key_not_canonical"],
])("S1 %s is refused", (_, bytes, code) => {
  expect(readFlightKey(bytes)).toMatchObject({ ok: false, issue: { code, path: ["key"] } });
});

test("S11 a record of the wrong shape is refused with every place that is wrong", () => {
  const { record } = play(sha256);
  const [first] = record.sheets;
  const issues = (value: unknown) => {
    const read = readRecord(value);
    return read.ok ? [] : read.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
  };
  expect(issues(record)).toEqual([]);
  expect(issues(null)[0]).toMatch(/^: a record requires exactly the properties form, commitment/);
  expect(issues({ ...record, extra: 1 })).toHaveLength(1);
  expect(issues({ ...record, nonce: "ab", sheets: [{ ...first, salt: "XY" }] })).toEqual([
    'nonce: nonce requires 32 or more lower-case hexadecimal digits, got "ab"',
    'sheets.0.salt: sheets.0.salt requires 32 or more lower-case hexadecimal digits, got "XY"',
  ]);
  expect(issues({ ...record, sheets: {} })).toEqual(["sheets: sheets requires a list, got object"]);
  expect(issues({ ...record, closing: { ...record.closing, closedAt: 1.5 } })).toEqual([
    "closing.closedAt: closing.closedAt requires a whole number from 0, got number",
  ]);
  const entries = [{ at: 1, kind: "wish", body: "\ud800", hash: "00".repeat(32) }];
  expect(issues({ ...record, sheets: [{ ...first, entries }] })).toHaveLength(2);
});
