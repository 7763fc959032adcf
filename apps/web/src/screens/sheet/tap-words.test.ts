import { ATTRIBUTES } from "@partsproof/core/sensory";
import fc from "fast-check";
import { expect, test } from "vitest";
import { familiesFor, hasWord, tapWord } from "./tap-words.ts";

test("a word is put after what stands there, and taken out by a second tap", () => {
  expect(tapWord("", "toffee")).toBe("toffee");
  expect(tapWord("Orange peel", "toffee")).toBe("Orange peel, toffee");
  expect(tapWord("Orange peel, toffee", "toffee")).toBe("Orange peel");
  expect(tapWord("Toffee, orange peel", "toffee")).toBe("orange peel");
  expect(tapWord("a, toffee, b", "toffee")).toBe("a, b");
});

test("a word inside another or inside a sentence is not that word", () => {
  expect(hasWord("Smoky bonfire", "smoke")).toBe(false);
  expect(tapWord("Smoke over the harbour", "smoke")).toBe("Smoke over the harbour, smoke");
});

test("every word of core's attributes can be reached from some sense; the nose is not asked how it feels", () => {
  const reached = new Set(
    (["nose", "palate", "finish"] as const).flatMap((sense) =>
      familiesFor(sense).flatMap(({ words }) => words),
    ),
  );
  expect(ATTRIBUTES.flatMap(({ words }) => words).filter((word) => !reached.has(word))).toEqual([]);
  expect(familiesFor("nose").map(({ id }) => id)).not.toContain("feel");
  expect(familiesFor("finish")[0]?.id).toBe("time");
});

test("law: two taps leave a note of words as it was", () => {
  const word = fc.constantFrom(...ATTRIBUTES.flatMap(({ words }) => words));
  fc.assert(
    fc.property(fc.uniqueArray(word, { maxLength: 6 }), word, (words, tapped) => {
      fc.pre(!words.includes(tapped));
      const note = words.join(", ");
      expect(hasWord(tapWord(note, tapped), tapped)).toBe(true);
      expect(tapWord(tapWord(note, tapped), tapped)).toBe(note);
    }),
  );
});
