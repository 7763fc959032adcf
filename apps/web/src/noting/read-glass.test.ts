import { expect, test } from "vitest";
import { bring } from "./bring.ts";
import type { Chip, Put } from "./chip.ts";
import { correct } from "./mark.ts";
import { type GlassNotes, lessonOf, readGlass } from "./read-glass.ts";

const notes = (some: Partial<GlassNotes>): GlassNotes => ({ nose: "", palate: "", finish: "", ...some });
const named = (chips: readonly Chip[], words: string): Chip => {
  const chip = chips.find((one) => one.words === words);
  if (chip === undefined)
    throw new Error(`chips require ${words}, got ${chips.map((one) => one.words).join(", ")}`);
  return chip;
};
const put = (chip: Chip, some: Partial<Put>): Put => ({
  attribute: chip.attribute,
  section: chip.section,
  strength: chip.strength,
  ...some,
});

test("a chip is tied to its words, and says attribute, section, strength, stance", () => {
  const text = "no smoke, a hint of vanilla";
  const { chips, strengths } = readGlass(notes({ nose: text }), []);
  expect(chips.map(({ attribute, section, stance }) => [attribute, section, stance])).toEqual([
    ["smoke.smoke", "nose", "absent"],
    ["sweet.vanilla", "nose", "present"],
  ]);
  for (const { quote, words } of chips) expect(text.slice(...quote)).toBe(words);
  expect(Object.fromEntries(strengths)).toEqual({ "nose/smoke.smoke": 0, "nose/sweet.vanilla": 2 });
});

test("what is faint is never written as 0, which says that it is not there", () => {
  const { strengths } = readGlass(notes({ palate: "the very faintest trace of smoke" }), []);
  expect(strengths.get("palate/smoke.smoke")).toBeGreaterThanOrEqual(1);
});

test("a chip that was put right wins over the text, also over the same attribute read elsewhere", () => {
  const text = notes({ nose: "smoke and honey", palate: "smoke on the nose" });
  const first = readGlass(text, []);
  const smoke = named(first.chips, "smoke");
  const marks = correct([], smoke, put(smoke, { strength: 9 }));
  expect(readGlass(text, marks).strengths.get("nose/smoke.smoke")).toBe(9);
  const moved = readGlass(
    text,
    correct(marks, smoke, put(smoke, { attribute: "wood.old", section: "finish" })),
  );
  expect(moved.strengths.get("finish/wood.old")).toBe(5);
  // Words no longer there take what was put right with them.
  expect(readGlass(notes({ nose: "honey" }), marks).strengths.has("nose/smoke.smoke")).toBe(false);
});

test("a chip that was put right stays where the reader comes to doubt its words", () => {
  const text = notes({ palate: "it hits my tongue like a thrown stone, and then ginger" });
  expect(readGlass(text, []).chips.map(({ words }) => words)).toEqual(["ginger"]);
  const stone = { sense: "palate", words: "stone", from: "palate/earth.earth" } as const;
  const marks = correct([], stone, { attribute: "earth.earth", section: "palate", strength: 7 });
  const { chips, strengths } = readGlass(text, marks);
  expect(chips.map(({ words }) => words)).toEqual(["stone", "ginger"]);
  expect(strengths.get("palate/earth.earth")).toBe(7);
});

test("a chip that was removed stays away, the others stay", () => {
  const text = notes({ nose: "smoke and honey" });
  const smoke = named(readGlass(text, []).chips, "smoke");
  const { chips, strengths } = readGlass(text, correct([], smoke, null));
  expect(chips.map(({ words }) => words)).toEqual(["honey"]);
  expect([...strengths.keys()]).toEqual(["nose/sweet.honey"]);
});

test("basic tastes and words for the whole are chips without a strength on the sheet", () => {
  const { chips, strengths } = readGlass(notes({ palate: "sour" }), []);
  expect(chips.map(({ attribute }) => attribute)).toEqual(["taste.basic"]);
  expect(strengths.size).toBe(0);
});

test("a word that the notes say the meaning of is offered until it is learned", () => {
  const text = notes({ nose: "by “attic” I mean musty" });
  const { offers } = readGlass(text, []);
  expect(offers).toEqual([{ phrase: "attic", attribute: "savoury.stale" }]);
  expect(readGlass(text, [], offers).offers).toEqual([]);
});

test("a chip that was put right teaches a word, by which the next note is read", () => {
  const text = notes({ nose: "an attic, and honey" });
  const attic = named(readGlass(text, []).chips, "attic");
  const lesson = lessonOf(attic, text, "savoury.stale", []);
  expect(lesson).toEqual({ phrase: "attic", attribute: "savoury.stale" });
  const words = lesson === null ? [] : [lesson];
  const next = readGlass(notes({ palate: "no attic" }), [], words);
  expect(next.chips.map(({ attribute, own, stance }) => [attribute, own, stance])).toEqual([
    ["savoury.stale", true, "absent"],
  ]);
  expect(
    readGlass(text, [], [{ phrase: "Attic", attribute: "nothing" }]).chips.map((one) => one.words),
  ).toEqual(["honey"]);
  expect(named(readGlass(text, []).chips, "attic").own).toBe(false);
});

test("strengths follow the words; those set or taken back by hand stay", () => {
  const stands = new Map([
    ["nose/smoke.smoke", 5],
    ["nose/wood.old", 7],
  ]);
  const gave = new Map([
    ["nose/smoke.smoke", 5],
    ["nose/wood.old", 5],
    ["nose/sweet.honey", 5],
  ]);
  const gives = new Map([
    ["nose/smoke.smoke", 2],
    ["nose/sweet.honey", 8],
    ["nose/fruit.stone", 5],
  ]);
  const changes = bring((key) => stands.get(key) ?? null, gave, gives);
  expect(Object.fromEntries(changes)).toEqual({ "nose/smoke.smoke": 2, "nose/fruit.stone": 5 });
});
