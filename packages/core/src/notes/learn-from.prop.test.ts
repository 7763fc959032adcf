import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NOTED } from "./attributes.data.ts";
import { ENGLISH } from "./english.data.ts";
import { learnFrom, phraseOf } from "./learn-from.ts";
import { openReader } from "./open-reader.ts";

const plain = openReader(ENGLISH);
const NOTES = [
  "an attic, a hint of smoke and brown butter",
  "no peach, more oak than the last one, drier on the finish",
  "smoke, smoke, smoke, and grandad's cedar box",
  "plum, no, actually cherry; maybe leather",
  "loads of dried figs all over, honeyed",
  "on the nose vanilla, to taste ginger nut, long after: pipe tobacco",
];
const correction = fc
  .constantFrom(...NOTES)
  .chain((text) =>
    fc.record({
      text: fc.constant(text),
      read: fc.constantFrom(...plain(text).observations),
      to: fc.constantFrom(...NOTED, "nothing" as const),
    }),
  )
  .map(({ text, read, to }) => ({ text, where: "whole" as const, read, to }));

describe("N15 what a correction teaches", { timeout: 20_000 }, () => {
  test("with the lesson the note is read as it was corrected to be", () => {
    fc.assert(
      fc.property(correction, (said) => {
        const lesson = learnFrom(said, ENGLISH);
        if (lesson === null) return;
        const [start, end] = said.read.quote;
        const there = openReader(ENGLISH, [lesson])(said.text).observations.filter(
          ({ quote }) => quote[0] < end && quote[1] > start,
        );
        if (said.to === "nothing") expect(there).toEqual([]);
        else expect(there.map(({ attribute }) => attribute)).toContain(said.to);
      }),
      { numRuns: 40 },
    );
  });

  test("a single quoted word always teaches, unless it is a length", () => {
    fc.assert(
      fc.property(correction, (said) => {
        const quoted = said.text.slice(...said.read.quote);
        fc.pre(/^[a-z]+$/.test(quoted) && said.read.attribute !== "time.finish" && said.to !== "time.finish");
        expect(learnFrom(said, ENGLISH)).not.toBeNull();
      }),
      { numRuns: 40 },
    );
  });

  test("what says nothing of the phrase is read as before", () => {
    fc.assert(
      fc.property(correction, fc.constantFrom(...NOTES), (said, other) => {
        const lesson = learnFrom(said, ENGLISH);
        fc.pre(lesson !== null && !other.includes(lesson.phrase.slice(0, 2)));
        expect(openReader(ENGLISH, lesson === null ? [] : [lesson])(other)).toEqual(plain(other));
      }),
      { numRuns: 30 },
    );
  });

  test("a phrase has one form however it is written, and its form is its own", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        expect(phraseOf(phraseOf(text))).toBe(phraseOf(text));
        expect(phraseOf(text.toUpperCase().toLowerCase())).toBe(phraseOf(text.toLowerCase()));
      }),
    );
    expect(phraseOf("  Grandad’s SHÉD, ")).toBe("grandad's shed");
    expect(phraseOf("one two three four five six seven eight nine ten")).toBe("");
    expect(phraseOf(" … ")).toBe("");
  });
});

test("N15 said again and again, the word is what is learned", () => {
  const text = "smoke, smoke, smoke";
  const [read] = plain(text).observations;
  expect(read).toBeDefined();
  if (read !== undefined)
    expect(learnFrom({ text, where: "nose", read, to: "earth.earth" }, ENGLISH)).toEqual({
      phrase: "smoke",
      attribute: "earth.earth",
    });
});
