import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { key, play } from "./fixtures/evening.ts";
import { addEntry, closeFlight, hex, keyBytes, type PublishedRecord, verifyRecord } from "./index.ts";

const sha256 = (bytes: Uint8Array): Uint8Array => new Uint8Array(createHash("sha256").update(bytes).digest());

const evening = play(sha256);
const { record } = evening;
const witness = { commitment: evening.commitment, closing: evening.closing.hash, receipts: evening.receipts };
const found = (changed: PublishedRecord, by: Parameters<typeof verifyRecord>[1] = witness) =>
  verifyRecord(changed, by, sha256).findings.map(
    ({ code, sheet, entry }) => `${code} ${sheet ?? "-"} ${entry ?? "-"}`,
  );
const withSheet = (name: string, change: (sheet: PublishedRecord["sheets"][number]) => object) => ({
  ...record,
  sheets: record.sheets.map((sheet) => (sheet.sheet === name ? { ...sheet, ...change(sheet) } : sheet)),
});

test("S8 an untouched record verifies and gives the key back", () => {
  const verdict = verifyRecord(record, witness, sha256);
  expect(verdict).toEqual({ findings: [], unchecked: [], key });
});

test("S12 what was not stored is unchecked", () => {
  expect(verifyRecord(record, {}, sha256).unchecked).toEqual(["commitment", "closing"]);
  expect(verifyRecord(record, { commitment: record.commitment }, sha256).unchecked).toEqual(["closing"]);
});

describe("S9 planted changes", () => {
  test("two glasses swapped in the key", () => {
    const [a, b, c] = key.glasses;
    if (!a || !b || !c) throw new Error("three glasses");
    const swapped = { ...key, glasses: [{ ...a, glass: "2" }, { ...b, glass: "1" }, c] };
    expect(found({ ...record, key: hex(keyBytes(swapped)) })).toEqual(["changed_key - -"]);
  });

  test("a guess put right afterwards, its digest left alone", () => {
    const changed = withSheet("ann", ({ entries }) => ({
      entries: entries.map((entry, i) =>
        i === 2 ? { ...entry, body: '{"719":"Lamplighter\'s Rest"}' } : entry,
      ),
    }));
    expect(found(changed)).toEqual(["changed_entry ann 3"]);
    expect(verifyRecord(changed, witness, sha256).findings[0]?.message).toBe(
      "sheet ann: entry 3 (guess) is not what was accepted: it does not fit its digest and the entry before it.",
    );
  });

  test("a guess dated back", () => {
    const changed = withSheet("ann", ({ entries }) => ({
      entries: entries.map((entry, i) => (i === 2 ? { ...entry, at: 500 } : entry)),
    }));
    expect(found(changed)).toEqual(["changed_entry ann 3", "time_runs_back ann 3"]);
  });

  test("a guess after the closing, with a digest that fits", () => {
    for (const at of [6000, 1600]) {
      const ben = evening.sheets.find(({ sheet }) => sheet === "ben");
      if (!ben) throw new Error("no sheet");
      const entry = { at, kind: "guess" as const, body: "late" };
      const late = addEntry({ commitment: record.commitment, sheet: ben, entry, closedAt: null, sha256 });
      if (!late.ok) throw new Error(late.issue.message);
      expect(found(withSheet("ben", () => ({ entries: late.sheet.entries })))).toEqual(["late_entry ben 2"]);
    }
  });

  test("an entry after the lock", () => {
    const ann = evening.sheets.find(({ sheet }) => sheet === "ann");
    const last = ann?.entries.at(-1);
    if (!ann || !last) throw new Error("no sheet");
    // The last lock taken for a note, so that the chain lets one more be added; then the lock put back.
    const open = { ...ann, entries: [...ann.entries.slice(0, -1), { ...last, kind: "note" as const }] };
    const entry = { at: 4500, kind: "guess" as const, body: "after the lock" };
    const added = addEntry({ commitment: record.commitment, sheet: open, entry, closedAt: null, sha256 });
    if (!added.ok) throw new Error(added.issue.message);
    const entries = [...ann.entries, ...added.sheet.entries.slice(-1)];
    const closing = closeFlight(
      record.commitment,
      [{ ...ann, entries }, ...evening.sheets.slice(1)],
      5000,
      sha256,
    );
    expect(found({ ...withSheet("ann", () => ({ entries })), closing })).toEqual([
      "other_closing - -",
      "late_entry ann 5",
    ]);
  });

  test("entries and sheets that are gone, doubled or new", () => {
    expect(found(withSheet("ann", ({ entries }) => ({ entries: entries.slice(0, 2) })))).toEqual([
      "missing_entry ann 4",
      "missing_entry ann 3",
    ]);
    expect(found({ ...record, sheets: record.sheets.slice(0, 1) })).toEqual(["sheet_set_changed ben -"]);
    const [first] = record.sheets;
    if (!first) throw new Error("no sheet");
    expect(found({ ...record, sheets: [...record.sheets, first] })).toEqual(["sheet_set_changed ann -"]);
    expect(found(withSheet("ben", () => ({ sheet: "bea", entries: [] })))).toEqual([
      "sheet_set_changed ben -",
      "sheet_set_changed bea -",
    ]);
  });
});

describe("S10 rewriting with digests that fit", () => {
  const forged = play(
    sha256,
    {
      ann: [{ at: 1000, kind: "guess", body: "all right" }],
      ben: [{ at: 1500, kind: "rank", body: '["861","294","637"]' }],
    },
    1,
  );

  test("a whole sheet", () => {
    const sheet = forged.record.sheets.find((one) => one.sheet === "ann");
    expect(found(withSheet("ann", () => ({ ...sheet })))).toEqual([
      "missing_entry ann 4",
      "rewritten_sheet ann 1",
    ]);
  });

  test("the closing too: only what phones stored gives it away", () => {
    expect(found(forged.record, {})).toEqual([]);
    expect(found(forged.record, { closing: evening.closing.hash })).toEqual(["other_closing - -"]);
    expect(found(forged.record, { receipts: evening.receipts })).toEqual(["rewritten_sheet ann 1"]);
  });

  test("another commitment", () => {
    expect(found(play(sha256, undefined, 2).record, { commitment: record.commitment })).toEqual([
      "other_commitment - -",
    ]);
  });
});

test("S7 a changed closing", () => {
  expect(found({ ...record, closing: { ...record.closing, closedAt: 9000 } })).toEqual([
    "changed_closing - -",
  ]);
});

test("S6 nothing is added after the lock, after the closing or out of time", () => {
  const [ann, ben] = evening.sheets;
  if (!ann || !ben) throw new Error("no sheets");
  const add = (sheet: typeof ann, at: number, closedAt: number | null) => {
    const entry = { at, kind: "guess" as const, body: "" };
    const added = addEntry({ commitment: record.commitment, sheet, entry, closedAt, sha256 });
    return added.ok ? added.sheet.entries.length : added.issue;
  };
  expect(add(ben, 1500, null)).toBe(2);
  expect(add(ann, 4500, null)).toMatchObject({ code: "sheet_locked", limit: 4000, received: 4500 });
  expect(add(ben, 1499, null)).toEqual({
    code: "time_runs_back",
    limit: 1500,
    received: 1499,
    message: "an entry requires a time not before 1500 ms, got one at 1499 ms",
  });
  expect(add(ben, 6000, 5000)).toMatchObject({ code: "flight_closed", limit: 5000 });
  expect(() => add(ben, 1.5, null)).toThrow("whole number of milliseconds, got 1.5 ms");
  expect(() => add({ ...ben, salt: new Uint8Array(15) }, 6000, null)).toThrow(
    "at least 128 bits, got 120 bits",
  );
  expect(() => closeFlight(record.commitment, [ann], 3999, sha256)).toThrow("from 4000, got 3999 ms");
});
