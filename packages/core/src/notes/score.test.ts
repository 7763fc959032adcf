import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { byVoice, type LabelledNote, score, told } from "./fixtures/score.ts";
import { openReader } from "./open-reader.ts";

// Invented notes, labelled twice over independently; split by whole note. Nobody who builds the reader opens the held part: this
// test prints totals and errors by kind, and no note.
const notes = (part: string): readonly LabelledNote[] =>
  JSON.parse(readFileSync(new URL(`fixtures/notes/${part}.json`, import.meta.url), "utf8")) as LabelledNote[];
const read = openReader(ENGLISH);

// The aim is F1 0.92, section 0.95 and strength 0.85 on the held part, and is just reached there; the bounds below keep what is reached, with
// a little room. The parts "build" to "last" were worked on with the notes in view, so that their scores are flattering; of "spare" and
// "guests-spare" the errors were never looked at. What each scored at first sight is in fixtures/notes/README.md.
test.each([
  ["build", { f1: 0.95, where: 0.98, strength: 0.93, order: 0.92 }],
  ["fresh", { f1: 0.95, where: 0.95, strength: 0.94, order: 0.93 }],
  ["unlike", { f1: 0.94, where: 0.95, strength: 0.87, order: 0.85 }],
  ["voices", { f1: 0.94, where: 0.95, strength: 0.93, order: 0.91 }],
  ["strangers", { f1: 0.96, where: 0.95, strength: 0.92, order: 0.91 }],
  ["later", { f1: 0.93, where: 0.95, strength: 0.93, order: 0.88 }],
  ["guests", { f1: 0.93, where: 0.95, strength: 0.93, order: 0.9 }],
  ["last", { f1: 0.91, where: 0.96, strength: 0.92, order: 0.83 }],
  ["guests-spare", { f1: 0.905, where: 0.945, strength: 0.935, order: 0.91 }],
  ["spare", { f1: 0.9, where: 0.9, strength: 0.88, order: 0.85 }],
  ["held", { f1: 0.915, where: 0.95, strength: 0.92, order: 0.89 }],
] as const)("labelled notes, the part %s", { timeout: 180_000 }, (part, least) => {
  const result = score(notes(part), read);
  console.log(`${told(part, result)}\n${byVoice(notes(part), read)}`);
  expect(result.f1).toBeGreaterThanOrEqual(least.f1);
  expect(result.where).toBeGreaterThanOrEqual(least.where);
  expect(result.strength).toBeGreaterThanOrEqual(least.strength);
  expect(result.order).toBeGreaterThanOrEqual(least.order);
});
