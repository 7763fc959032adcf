import fc from "fast-check";
import { expect, test } from "vitest";
import { NOTED } from "./attributes.data.ts";
import { ENGLISH } from "./english.data.ts";
import { notes } from "./fixtures/note-texts.ts";
import { openReader } from "./open-reader.ts";

const read = openReader(ENGLISH);
const ids: ReadonlySet<string> = new Set(NOTED);

test("N1 quotes lie within the text, in order, never empty; strengths on the scale", () => {
  fc.assert(
    fc.property(notes, (text) => {
      let before = 0;
      for (const { quote, attribute, strength, spread } of read(text).observations) {
        const [start, end] = quote;
        expect(start).toBeGreaterThanOrEqual(before);
        expect(end).toBeGreaterThan(start);
        expect(end).toBeLessThanOrEqual(text.length);
        expect(strength).toBeGreaterThanOrEqual(0);
        expect(strength).toBeLessThanOrEqual(10);
        expect(spread).toBeGreaterThan(0);
        expect(ids.has(attribute)).toBe(true);
        before = start;
      }
    }),
  );
});

test("N1 the same text by another reader is the same", () => {
  const other = openReader(ENGLISH);
  fc.assert(
    fc.property(notes, (text) => {
      expect(other(text)).toEqual(read(text));
    }),
  );
});

test("N1 lower case says the same as upper case", () => {
  fc.assert(
    fc.property(notes, (text) => {
      const [low, high] = [text.toLowerCase(), text.toUpperCase()];
      // Letters whose capital is longer stand elsewhere.
      fc.pre(low.length === text.length && high.length === text.length && high.toLowerCase() === low);
      expect(read(high)).toEqual(read(low));
    }),
  );
});

test("N3 an empty line begins anew: two notes with one between say what each says", () => {
  // A heading alone goes on over an empty line, "that was wrong" and a third mention reach back: none of these here.
  const plain = fc
    .array(
      fc.constantFrom(
        "honey",
        "no smoke",
        "a hint of plum",
        "oak on the palate",
        "On the nose, lemon",
        "maybe tea",
      ),
      {
        minLength: 1,
        maxLength: 4,
      },
    )
    .map((sentences) => `${[...new Set(sentences)].join(". ")}.`);
  fc.assert(
    fc.property(plain, plain, (a, b) => {
      const [first, second] = [read(a), read(b)];
      const shift = a.length + 2;
      const moved = second.observations.map((one) => ({
        ...one,
        quote: [one.quote[0] + shift, one.quote[1] + shift],
      }));
      expect(read(`${a}\n\n${b}`).observations).toEqual([...first.observations, ...moved]);
    }),
  );
});

test("as one types: what a finished sentence said stands while the next is typed", () => {
  const text =
    "On the nose vanilla and pear. On the palate a hint of smoke, oak. The finish is long and dry.";
  const first = read(text.slice(0, 29)).observations;
  for (let end = 30; end <= text.length; end++)
    expect(read(text.slice(0, end)).observations.slice(0, 2)).toEqual(first);
});
