import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { joinFields } from "./join-fields.ts";
import { type FieldValue, sameValue } from "./sheet-fields.ts";

const keys = ["note/101/first/nose", "score/101", "guess/101", "ranking"];
const value = (key: string): fc.Arbitrary<FieldValue> =>
  key === "ranking"
    ? fc.constantFrom<FieldValue>(null, [["101"], ["202"]], [["202"], ["101"]], [["101", "202"]])
    : key.startsWith("score")
      ? fc.constantFrom<FieldValue>(null, 70, 80)
      : key.startsWith("guess")
        ? fc.constantFrom<FieldValue>(null, "whiskey:a", "batch:b")
        : fc.constantFrom<FieldValue>("", "pear", "smoke", "pear and smoke");
const sheet = fc
  .tuple(...keys.map(value))
  .map((values) => new Map(keys.map((key, i) => [key, values[i] ?? null])));
const changed = sheet.chain((whole) =>
  fc.subarray([...whole]).map((entries) => new Map<string, FieldValue>(entries)),
);

const after = (theirs: ReadonlyMap<string, FieldValue>, mine: ReadonlyMap<string, FieldValue>) =>
  new Map([...theirs, ...mine]);

describe("joining two devices' changes of a sheet", () => {
  test("a field that only one side changed goes by that side", () => {
    fc.assert(
      fc.property(sheet, changed, sheet, (base, mine, theirs) => {
        const joined = after(theirs, joinFields(base, mine, theirs).mine);
        for (const key of keys) {
          const there = !sameValue(theirs.get(key), base.get(key));
          const here = mine.has(key) ? mine.get(key) : base.get(key);
          const both = there && mine.has(key);
          const expected = both ? joined.get(key) : there ? theirs.get(key) : here;
          expect(joined.get(key)).toEqual(expected);
        }
      }),
    );
  });

  test("of two texts none is lost", () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (was, here, there) => {
        const key = "note/101/first/nose";
        fc.pre(here !== was && there !== was);
        const one = (text: string) => new Map<string, FieldValue>([[key, text]]);
        const joined = String(after(one(there), joinFields(one(was), one(here), one(there)).mine).get(key));
        expect(joined).toContain(here);
        expect(joined).toContain(there);
      }),
    );
  });

  test("what cannot stand twice goes by this side and is named as a clash", () => {
    const joined = joinFields(
      new Map<string, FieldValue>([["guess/101", null]]),
      new Map<string, FieldValue>([["guess/101", "whiskey:a"]]),
      new Map<string, FieldValue>([["guess/101", "batch:b"]]),
    );
    expect(joined).toEqual({ mine: new Map([["guess/101", "whiskey:a"]]), clashes: ["guess/101"] });
  });
});
