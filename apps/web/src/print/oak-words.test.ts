import { expect, test } from "vitest";
import { oakInAndOut, oakWords } from "./oak-words.ts";

const stick = {
  id: "01m89526crwf6x6vmpz1q1hb7k",
  version: 1,
  piece: { shape: "stick" as const, cm: [1, 1, 16] as [number, number, number] },
  count: 1,
  areaCm2: 66,
  grams: 10.9,
  thicknessCm: 1,
  species: "American oak" as const,
  toast: "medium toast",
  use: 1,
  volumeMl: 740,
  inAt: "2026-11-01T20:00:00.000Z",
  outAt: "2026-11-13T20:00:00.000Z",
};

test("the wood that was in is said, with how long; the recipe's words only where none was", () => {
  expect(oakWords([], "one stick, 9 days")).toBe("one stick, 9 days");
  expect(oakWords([{ oak: [] }], "one stick, 9 days")).toBe("one stick, 9 days");
  expect(oakWords([{ oak: [stick] }], "one stick, 9 days")).toBe(
    "1 stick of American oak, medium toast, 12 days",
  );
  const chips = { ...stick, piece: null, species: "not known" as const, toast: "", use: 2, outAt: null };
  expect(oakWords([{ oak: [stick, chips] }], "")).toMatch(
    /, 12 days and wood, used once before, in since .*2026$/,
  );
});

test("what is in a batch and what was are told apart, over all its rests", () => {
  expect(oakInAndOut([])).toEqual({ in: "", out: "" });
  const still = { ...stick, toast: "", outAt: null };
  const said = oakInAndOut([{ oak: [stick, still] }, { oak: [{ ...stick, count: 2 }] }]);
  expect(said.in).toMatch(/^1 stick of American oak, in since .*2026$/);
  expect(said.out).toBe(
    "1 stick of American oak, medium toast, 12 days and 2 sticks of American oak, medium toast, 12 days",
  );
  expect(oakInAndOut([{ oak: [stick] }]).in).toBe("");
});
