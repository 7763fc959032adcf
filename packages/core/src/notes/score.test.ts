import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { type LabelledNote, score, told } from "./fixtures/score.ts";
import { openReader } from "./open-reader.ts";

// Invented notes, labelled twice over independently; split by whole note. Nobody who builds the reader opens the held part: this
// test prints totals and errors by kind, and no note.
const notes = (part: string): readonly LabelledNote[] =>
  JSON.parse(readFileSync(new URL(`fixtures/notes/${part}.json`, import.meta.url), "utf8")) as LabelledNote[];
const read = openReader(ENGLISH);

// The aim is F1 0.92, section 0.95 and strength 0.85 on the held part. F1 and section fall short of it there; the bounds below only
// keep what is reached. The build part was worked on with the notes in view, so that its score is flattering.
test.each([
  ["build", { f1: 0.94, where: 0.97, strength: 0.92, order: 0.9 }],
  ["held", { f1: 0.89, where: 0.93, strength: 0.88, order: 0.82 }],
] as const)("labelled notes, the part %s", { timeout: 60_000 }, (part, least) => {
  const result = score(notes(part), read);
  console.log(told(part, result));
  expect(result.f1).toBeGreaterThanOrEqual(least.f1);
  expect(result.where).toBeGreaterThanOrEqual(least.where);
  expect(result.strength).toBeGreaterThanOrEqual(least.strength);
  expect(result.order).toBeGreaterThanOrEqual(least.order);
});
