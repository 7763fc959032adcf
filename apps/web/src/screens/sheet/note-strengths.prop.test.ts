import { ATTRIBUTES } from "@partsproof/core/sensory";
import fc from "fast-check";
import { expect, test } from "vitest";
import { joinNote, proseIn, strengthsIn, withStrength } from "./note-strengths.ts";

const anId = fc.constantFrom(...ATTRIBUTES.map(({ id }) => id));
const aStrength = fc.integer({ min: 0, max: 1000 }).map((n) => n / 100);
const strengths = fc
  .array(fc.tuple(anId, aStrength), { maxLength: 6 })
  .map((all) => new Map<string, number>(all));

test("a line that people can read, and the note beside it", () => {
  const note = withStrength(withStrength("Rye bread", "smoke.smoke", 6), "sweet.vanilla", 3.5);
  expect(note).toBe("Rye bread\nOf 10: smoke 6, vanilla 3.5");
  expect([proseIn(note), strengthsIn(note).get("smoke.smoke")]).toEqual(["Rye bread", 6]);
  expect(withStrength(withStrength(note, "smoke.smoke", null), "sweet.vanilla", null)).toBe("Rye bread");
});

test("not said is not 0: 0 stays in the note, null leaves it", () => {
  expect(withStrength("", "smoke.smoke", 0)).toBe("Of 10: smoke 0");
  expect(strengthsIn("Rye bread").has("smoke.smoke")).toBe(false);
});

test("prose that only looks like it stays prose", () => {
  for (const prose of ["Of 10: I would give it 6", "Of 10: smoke 11", "Of 10: ", "of 10: smoke 6"])
    expect([proseIn(prose), strengthsIn(prose).size]).toEqual([prose, 0]);
});

test("law: what is set is what is read, the prose untouched", () => {
  fc.assert(
    fc.property(fc.string(), strengths, (prose, set) => {
      fc.pre(strengthsIn(prose).size === 0);
      const note = joinNote(prose, set);
      expect(new Map(strengthsIn(note))).toEqual(set);
      expect(proseIn(note)).toBe(prose);
    }),
  );
});

test("law: two notes joined by a line break lose no prose, and the later intensity stands", () => {
  fc.assert(
    fc.property(strengths, strengths, (there, here) => {
      const both = `${joinNote("there", there)}\n${joinNote("here", here)}`;
      expect(new Map(strengthsIn(both))).toEqual(new Map([...there, ...here]));
      expect(proseIn(both)).toBe("there\nhere");
    }),
  );
});
