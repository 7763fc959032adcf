import { expect, test } from "vitest";
import {
  draftOf,
  newTrials,
  previewOf,
  readTrials,
  stillWrong,
  termsOf,
  type TypedTrials,
} from "./typed-trials.ts";

const typed: TypedTrials = {
  ...newTrials("Bench"),
  parts: [
    { key: "whiskey:a", low: "20", high: "60 %" },
    { key: "batch:b", low: "", high: "" },
  ],
  plan: "D",
};
const stocks = new Map([
  ["whiskey:a", { label: "Malt", abv20: 62.4, perMl: [] }],
  ["batch:b", { label: "Malt", abv20: 46, perMl: [] }],
]);

test("what is typed is what the house is asked, for the sum and for the set", () => {
  const read = readTrials(typed);
  if (!read.ok) throw new Error("readable");
  expect(draftOf(typed, read)).toEqual({
    name: "Bench",
    parts: [
      { of: { kind: "whiskey", whiskeyId: "a" }, low: 0.2, high: 0.6 },
      { of: { kind: "batch", batchId: "b" } },
    ],
    plan: "D",
    model: "quadratic",
    trials: 4,
    volumeMl: 30,
    syringeMl: 0.5,
  });
  expect(previewOf(typed, read, stocks)?.parts).toEqual([
    { name: "Malt", strength: { basis: "abv20", value: 62.4 }, low: 0.2, high: 0.6 },
    { name: "Malt 2", strength: { basis: "abv20", value: 46 } },
  ]);
  const one = { ...typed, parts: typed.parts.map((part) => ({ ...part, key: "batch:b" })) };
  expect(previewOf(one, read, stocks)).toBeNull();
});

test("whole plans take no bounds, and only D and I a number", () => {
  const read = readTrials({ ...typed, plan: "lattice", steps: 3 });
  expect(read).toMatchObject({ ok: true, bounds: [{}, {}], settings: { plan: "lattice", steps: 3 } });
  expect(read.ok && "trials" in read.settings).toBe(false);
});

test("what cannot be read is named where it was typed", () => {
  const read = readTrials({
    ...typed,
    volume: "5 mL",
    step: "x",
    parts: [
      { key: "", low: "many", high: "120" },
      { key: "batch:b", low: "", high: "" },
    ],
  });
  expect(!read.ok && read.issues.map(({ path }) => path.join("/"))).toEqual([
    "volumeMl",
    "syringeMl",
    "parts/0/low",
    "parts/0/high",
    "parts/0/of",
  ]);
});

test("an issue goes when what was typed is put right, and what the house said stays", () => {
  const read = readTrials({ ...typed, volume: "5 mL" });
  const issues = read.ok ? [] : read.issues;
  const house = { code: "too_few_trials", path: ["trials"], limit: "", received: 1, message: "" };
  expect(stillWrong({ ...typed, volume: "5 mL" }, [...issues, house])).toEqual([...issues, house]);
  expect(stillWrong(typed, [...issues, house])).toEqual([house]);
});

test("terms are those of Scheffé's polynomials: 3 parts 3, 6 and 7; 4 parts 4, 10 and 14", () => {
  // Scheffé 1958; Cornell, Experiments with Mixtures (from memory).
  const of = (parts: number) =>
    (["linear", "quadratic", "special-cubic"] as const).map((model) => termsOf(model, parts));
  expect([of(3), of(4)]).toEqual([
    [3, 6, 7],
    [4, 10, 14],
  ]);
});
