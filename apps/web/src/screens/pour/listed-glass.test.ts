import { expect, test } from "vitest";
import { inSets, intoWords, tickOf } from "./listed-glass.ts";

const glass = (set: number | null, code: string) => ({
  set,
  code,
  position: 1,
  vesselId: "v",
  label: "Tarn",
});

test("glasses by set in their order; without sets, one row", () => {
  const glasses = [glass(1, "R"), glass(1, "204"), glass(2, "R"), glass(2, "558")];
  expect(inSets(glasses).map(({ set, glasses: those }) => [set, ...those.map(({ code }) => code)])).toEqual([
    [1, "R", "204"],
    [2, "R", "558"],
  ]);
  expect(inSets([glass(null, "204"), glass(null, "558")])).toHaveLength(1);
});

test("every R is ticked off by itself, and no tick has a space in it", () => {
  const ticks = ["Ana Lee", "Bo"].flatMap((taster) => [1, 2].map((set) => tickOf(taster, glass(set, "R"))));
  expect(new Set(ticks).size).toBe(4);
  expect(ticks.join("")).not.toContain(" ");
  expect(tickOf("Bo", glass(1, "204"))).toBe("204");
  expect([intoWords("Bo", glass(2, "R")), intoWords("Bo", glass(null, "R"))]).toEqual([
    "Bo’s R of set 2",
    "Bo’s R",
  ]);
});
