import fc from "fast-check";
import { expect, test } from "vitest";
import { edits, nearest } from "./nearest.ts";

const word = fc.string({ maxLength: 8, unit: fc.constantFrom("a", "b", "c", "é") });

test.each([
  ["mix", "mix", 0],
  ["mxi", "mix", 1],
  ["mi", "mix", 1],
  ["mixx", "mix", 1],
  ["", "mix", 3],
  ["ca", "abc", 3],
  // Levenshtein's own much quoted pair.
  ["kitten", "sitting", 3],
])("from %j to %j takes %d edits", (a, b, count) => {
  expect(edits(a, b)).toBe(count);
});

test("the count of edits is symmetric, 0 only of itself, at most the longer word, at least the difference", () => {
  fc.assert(
    fc.property(word, word, (a, b) => {
      const count = edits(a, b);
      expect(count).toBe(edits(b, a));
      expect(count === 0).toBe(a === b);
      expect(count).toBeLessThanOrEqual(Math.max(a.length, b.length));
      expect(count).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
    }),
  );
});

test("the nearest is one of the words and no other is nearer", () => {
  fc.assert(
    fc.property(word, fc.array(word, { minLength: 1 }), (typed, words) => {
      const near = nearest(typed, words) ?? "";
      expect(words).toContain(near);
      for (const other of words) expect(edits(typed, near)).toBeLessThanOrEqual(edits(typed, other));
    }),
  );
  expect(nearest("x", [])).toBeNull();
});
