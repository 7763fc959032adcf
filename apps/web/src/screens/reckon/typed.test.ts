import { expect, test } from "vitest";
import { asTyped, FIRST, nextRowId } from "./typed.ts";

test("what was typed at the bench comes back as it was", () => {
  const typed = {
    rows: [{ id: 4, parts: 3, strength: "124.8 proof" }],
    fields: { ...FIRST.fields, reduceTo: "92 proof" },
  };
  expect(asTyped(JSON.stringify(typed))).toEqual(typed);
});

test("what is not whole is as at first, field by field", () => {
  for (const text of [null, "", "null", "[", "{}", '{"rows":[],"fields":3}', '{"rows":[{"id":1}]}']) {
    expect(asTyped(text)).toEqual(FIRST);
  }
  const half = JSON.stringify({ rows: "none", fields: { warmth: "75 F", reduceTo: 4, madeUp: "x" } });
  expect(asTyped(half).fields).toEqual({ ...FIRST.fields, warmth: "75 F" });
});

test("a new row has an id that no row has", () => {
  expect(nextRowId(FIRST.rows)).toBe(3);
  expect(nextRowId([])).toBe(1);
});
