import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { openReader } from "./open-reader.ts";

const { weighing: _, ...PLAIN } = ENGLISH;
const read = openReader(ENGLISH);
const plain = openReader(PLAIN);
const words = (text: string): readonly string[] => read(text).observations.map(({ word }) => word);

// Written before it was seen how the reader does on them; of nine such stray words that the rules read, the weights left out these three.
const STRAY = [
  ["like a letter left on the stone of a well, apples after it", "stone"],
  ["it hits my tongue like a thrown stone, and then ginger", "stone"],
  ["smells like the box my brother kept his paper money in, cedar and mint", "paper"],
] as const;

test.each(STRAY)("N17 %s: %s is doubted, and read where nothing is weighed", (text, word) => {
  expect(words(text)).not.toContain(word);
  expect(read(text).doubted.map((one) => one.word)).toEqual([word]);
  expect(plain(text).observations.map((one) => one.word)).toContain(word);
  expect(plain(text).doubted).toEqual([]);
});

test.each([
  "a faint smell of the sea and some lemon",
  "candle wax and honey on the nose",
  "wet stone, green apple, chalk",
  "there's something of an old church in it, and beeswax",
  "tar, rope and salt",
  "old paper and leather on the finish",
  "mud and peat smoke, then malt",
  "I get leaf and stem, then pear",
  "cellar, damp wood, plums",
  "tastes of cake, butter and almond",
  "nose: garden after rain, mint",
  "oyster shell and lime to taste",
])("N17 %s: nothing is doubted", (text) => {
  expect(read(text).doubted).toEqual([]);
  expect(words(text)).toEqual(plain(text).observations.map(({ word }) => word));
});

test("N17 what a household taught is never doubted, nor what is denied", () => {
  const [text] = STRAY[1];
  const taught = openReader(ENGLISH, [{ phrase: "stone", attribute: "earth.earth" }]);
  expect(taught(text).observations.map(({ word }) => word)).toContain("stone");
  expect(taught(text).doubted).toEqual([]);
  expect(read("it hits my tongue, no stone, and then ginger").observations).toContainEqual(
    expect.objectContaining({ word: "stone", stance: "absent" }),
  );
});

test("N14 what a household means by a word stays so on the nose", () => {
  const taught = openReader(ENGLISH, [{ phrase: "vanilla", attribute: "feel.burn" }]);
  expect(taught("on the nose vanilla").observations[0]?.attribute).toBe("feel.burn");
});

test("N17 what is doubted and what is read are together what the rules read", { timeout: 60_000 }, () => {
  const file = new URL("fixtures/notes/build.json", import.meta.url);
  const notes = JSON.parse(readFileSync(file, "utf8")) as readonly { readonly text: string }[];
  let doubted = 0;
  for (const { text } of notes) {
    const weighed = read(text);
    doubted += weighed.doubted.length;
    const both = [...weighed.observations, ...weighed.doubted].map(({ attribute }) => attribute);
    expect(new Set(both)).toEqual(new Set(plain(text).observations.map(({ attribute }) => attribute)));
  }
  expect(doubted).toBeGreaterThan(0);
});
