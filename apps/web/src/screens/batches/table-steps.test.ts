import type { Batch } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { tableSteps } from "./table-steps.ts";

const batch = (abv20: number, poured: readonly string[], restDays: number | null = 21) => ({
  made: { abv20 } as Batch["made"],
  poured: poured.map((label) => ({ transferId: label, label, ml: 100, g: 90 })),
  restDays,
});
const ids = (...asked: Parameters<typeof tableSteps>) => tableSteps(...asked).map(({ id }) => id);

test("haze is told only of what was reduced below 46 % vol, and waiting only where water went in", () => {
  expect(ids(batch(45.9, ["Malt", "water"]), "")).toEqual(["shake", "cool", "haze", "label", "away"]);
  expect(ids(batch(46, ["Malt", "water"]), "")).toEqual(["shake", "cool", "label", "away"]);
  expect(ids(batch(40, ["Malt"]), "")).toEqual(["shake", "label", "away"]);
});

test("oak and rest where there are any; every hazard without a source says so", () => {
  expect(ids(batch(50, ["Malt"], null), "one stick")).toEqual(["shake", "oak", "label"]);
  const steps = tableSteps(batch(43, ["Malt", "water"]), "one stick");
  for (const id of ["shake", "cool", "haze"])
    expect(steps.find((step) => step.id === id)?.mind).toContain("Common practice, no source");
});
