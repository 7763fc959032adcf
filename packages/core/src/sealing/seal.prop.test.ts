import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { key, play, seeded, type Written } from "./fixtures/evening.ts";
import {
  bytesOfHex,
  commitmentTo,
  commitmentWords,
  drawNonce,
  type FlightKey,
  hex,
  keyBytes,
  readFlightKey,
  readRecord,
  utf8,
  verifyRecord,
  WORDS_BITS,
  WORDS_SHOWN,
} from "./index.ts";
import { WORDS } from "./words.data.ts";

const sha256 = (bytes: Uint8Array): Uint8Array => new Uint8Array(createHash("sha256").update(bytes).digest());

const text = fc.oneof(
  fc.string(),
  fc.string({ unit: "grapheme" }),
  fc.constantFrom("", ",", "1:a,", "0:,", "é", "e\u0301"),
);
const keys: fc.Arbitrary<FlightKey> = fc
  .record({
    flight: text,
    glasses: fc.uniqueArray(fc.record({ glass: text, vessel: text, name: text }), {
      selector: ({ glass }) => glass,
      maxLength: 5,
    }),
    sets: fc.boolean(),
    expected: fc.option(fc.nat(), { nil: undefined }),
    slots: fc.uniqueArray(
      fc.record({
        sheet: text,
        set: fc.integer({ min: 1, max: 3 }),
        turn: fc.integer({ min: 1, max: 12 }),
      }),
      { selector: ({ sheet, turn }) => JSON.stringify([sheet, turn]), maxLength: 8 },
    ),
  })
  .chain(({ flight, glasses, slots, sets, expected }) =>
    fc.array(fc.nat(), { minLength: slots.length, maxLength: slots.length }).map((picks) => ({
      flight,
      glasses,
      // An expected glass called "" could not be told from none; glasses of a house are numbered.
      ...(sets && expected !== undefined && glasses[expected % glasses.length]?.glass
        ? { expected: glasses[expected % glasses.length]?.glass ?? "" }
        : {}),
      codes:
        glasses.length === 0
          ? []
          : slots.map(({ set, ...slot }, i) => ({
              ...slot,
              ...(sets ? { set } : {}),
              code: String(100 + i),
              glass: glasses[(picks[i] ?? 0) % glasses.length]?.glass ?? "",
            })),
    })),
  );
const sorted = ({ flight, glasses, codes, expected }: FlightKey): unknown => [
  flight,
  expected,
  new Set(glasses.map((one) => JSON.stringify([one.glass, one.vessel, one.name]))),
  new Set(codes.map((one) => JSON.stringify([one.sheet, one.set, one.turn, one.code, one.glass]))),
];

test("S1 a key read back is the key, in whatever order it came", () => {
  fc.assert(
    fc.property(keys, (one) => {
      const bytes = keyBytes(one);
      const back = readFlightKey(bytes);
      if (!back.ok) throw new Error(back.issue.message);
      expect(sorted(back.key)).toEqual(sorted(one));
      const turned = { ...one, glasses: one.glasses.toReversed(), codes: one.codes.toReversed() };
      expect(hex(keyBytes(turned))).toBe(hex(bytes));
    }),
  );
});

test("S1 different keys have different bytes", () => {
  fc.assert(
    fc.property(keys, keys, (a, b) => {
      const same = JSON.stringify(readFlightKey(keyBytes(a))) === JSON.stringify(readFlightKey(keyBytes(b)));
      expect(hex(keyBytes(a)) === hex(keyBytes(b))).toBe(same);
    }),
  );
});

test("S1, S3 one changed byte of a key is refused or another key, and never the same commitment", () => {
  fc.assert(
    fc.property(keys, fc.nat(), fc.integer({ min: 1, max: 255 }), (one, where, flip) => {
      const bytes = keyBytes(one);
      const nonce = drawNonce(seeded(where));
      const at = where % bytes.length;
      const changed = bytes.with(at, (bytes[at] ?? 0) ^ flip);
      const read = readFlightKey(changed);
      if (read.ok) expect(hex(keyBytes(read.key))).toBe(hex(changed));
      expect(commitmentTo(changed, nonce, sha256)).not.toBe(commitmentTo(bytes, nonce, sha256));
      const n = where % nonce.length;
      const other = nonce.with(n, (nonce[n] ?? 0) ^ flip);
      expect(commitmentTo(bytes, other, sha256)).not.toBe(commitmentTo(bytes, nonce, sha256));
    }),
  );
});

const kinds = fc.constantFrom("note", "guess", "rank");
const lists: fc.Arbitrary<readonly Written[]> = fc
  .tuple(fc.array(fc.record({ at: fc.nat(4900), kind: kinds, body: text }), { maxLength: 5 }), fc.boolean())
  .map(([some, locked]) => [
    ...some.toSorted((a, b) => a.at - b.at),
    ...(locked ? [{ at: 4950, kind: "lock" as const, body: "" }] : []),
  ]);
const evenings = fc
  .record({ ann: lists, ben: lists, seed: fc.nat() })
  .map(({ ann, ben, seed }) => play(sha256, { ann, ben }, seed));

test("S8 whatever was written, an untouched record verifies, also after a round trip as JSON", () => {
  fc.assert(
    fc.property(evenings, ({ record, closing, commitment, receipts }) => {
      const read = readRecord(JSON.parse(JSON.stringify(record)));
      if (!read.ok) throw new Error(read.issues[0]?.message);
      const witness = { commitment, closing: closing.hash, receipts };
      expect(verifyRecord(read.record, witness, sha256)).toMatchObject({ findings: [], unchecked: [] });
    }),
    { numRuns: 40 },
  );
});

/** What a check makes of the bytes of a record file: not JSON, not a record, or findings. */
function complaints(bytes: Uint8Array): number {
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return 1;
  }
  const read = readRecord(value);
  if (!read.ok) return read.issues.length;
  return verifyRecord(read.record, {}, sha256).findings.length;
}

test("S11 every byte of one record, changed in two ways, is found without anything stored", () => {
  const bytes = utf8(JSON.stringify(play(sha256).record));
  expect(complaints(bytes)).toBe(0);
  const silent: string[] = [];
  for (let at = 0; at < bytes.length; at += 1) {
    // One bit, and the bit that turns small letters into capitals: where a laxer reader would see no difference.
    for (const flip of [1 << (at % 8), 0x20]) {
      if (complaints(bytes.with(at, (bytes[at] ?? 0) ^ flip)) === 0) silent.push(`byte ${at} by ${flip}`);
    }
  }
  expect(bytes.length).toBeGreaterThan(1500);
  expect(silent).toEqual([]);
}, 60_000);

test("S11 any changed byte of any record is found", () => {
  fc.assert(
    fc.property(evenings, fc.nat(), fc.integer({ min: 1, max: 255 }), ({ record }, where, flip) => {
      const bytes = utf8(JSON.stringify(record));
      const at = where % bytes.length;
      expect(complaints(bytes.with(at, (bytes[at] ?? 0) ^ flip))).toBeGreaterThan(0);
    }),
    { numRuns: 150 },
  );
});

test("S2 a nonce has 128 bits or more; 256 are drawn", () => {
  expect(drawNonce(seeded(1)).length * 8).toBe(256);
  expect(() => commitmentTo(keyBytes(key), new Uint8Array(15), sha256)).toThrow(
    "a nonce requires at least 128 bits, got 120 bits",
  );
});

test("S5 256 words of four to six letters, alphabetical, no two alike in all but one letter or in their first four", () => {
  expect(WORDS.length).toBe(256);
  expect(WORDS.toSorted()).toEqual(WORDS);
  expect(new Set(WORDS.map((word) => word.slice(0, 4))).size).toBe(256);
  for (const [i, a] of WORDS.entries()) {
    expect(a).toMatch(/^[a-z]{4,6}$/);
    for (const b of WORDS.slice(i + 1)) {
      const off = a.length === b.length ? a.split("").filter((letter, at) => letter !== b[at]).length : 2;
      expect(off, `${a} ${b}`).toBeGreaterThan(1);
    }
  }
});

test("S5 the words are the first 48 bits and nothing else", () => {
  fc.assert(
    fc.property(fc.uint8Array({ minLength: 32, maxLength: 32 }), (digest) => {
      const words = commitmentWords(hex(digest));
      expect(words.map((word) => WORDS.indexOf(word))).toEqual([...digest.subarray(0, WORDS_SHOWN)]);
    }),
  );
  expect(WORDS_BITS).toBe(48);
  expect(() => commitmentWords("AB".repeat(32))).toThrow("64 lower-case hexadecimal digits");
  expect(() => commitmentWords("00")).toThrow(RangeError);
});

test("S1 bytes and texts: UTF-8 as everybody writes it, hexadecimal in one form", () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(0xffff)).map((units) => String.fromCharCode(...units)),
      (any) => {
        const whole = any.toWellFormed();
        expect([...utf8(whole)]).toEqual([...new TextEncoder().encode(whole)]);
      },
    ),
  );
  expect(() => utf8("\ud800")).toThrow("half a surrogate pair");
  expect(bytesOfHex("0aff")).toEqual(Uint8Array.from([10, 255]));
  expect([bytesOfHex("0A"), bytesOfHex("0"), bytesOfHex("zz")]).toEqual([null, null, null]);
});

test("S1 the bytes of a text are those of the platform's own UTF-8, and a broken text has none", () => {
  const whole = fc.oneof(fc.string({ unit: "binary" }), fc.string({ unit: "grapheme" }));
  fc.assert(
    fc.property(whole, (said) => {
      expect(utf8(said)).toEqual(new TextEncoder().encode(said));
    }),
  );
  // The first and last character of every length, RFC 3629, 3.
  for (const point of [0, 0x7f, 0x80, 0x7ff, 0x800, 0xffff, 0x10000, 0x10ffff]) {
    const said = `a${String.fromCodePoint(point)}b`;
    expect(utf8(said)).toEqual(new TextEncoder().encode(said));
  }
  expect(() => utf8("\ud83c")).toThrow("a sealed text requires whole characters, got half a surrogate pair");
});
