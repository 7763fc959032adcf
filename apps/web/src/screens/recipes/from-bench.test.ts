import { expect, test } from "vitest";
import type { Stock } from "../../mixing/index.ts";
import { fromBench } from "./from-bench.ts";

const stock = (label: string, abv20: number): Stock => ({ label, abv20, perMl: [] });
const cellar = {
  stocks: new Map([
    ["whiskey:k", stock("Kettle", 62.4)],
    ["whiskey:w", stock("Wall", 46)],
    ["batch:b", stock("Last one", 46.02)],
  ]),
};

test("a strength that one whiskey has is that whiskey; what is unknown or not alone stays open and is said", () => {
  const parts = [
    { parts: 2, abv20: 62.4 },
    { parts: 1, abv20: 46 },
    { parts: 1, abv20: 55 },
  ];
  const { typed, notes } = fromBench({ parts, waterTo: 50, finalMl: 700 }, cellar);
  expect(typed.slots.map(({ parts: n, key }) => [n, key])).toEqual([
    [2, "whiskey:k"],
    [1, ""],
    [1, ""],
  ]);
  expect(typed.water).toBe("50.0%");
  expect(notes).toHaveLength(2);
  expect(notes[0]).toMatch(/^Slot 2: 2 here have 46\.0/);
  expect(notes[1]).toMatch(/^Slot 3: no whiskey or batch here has 55\.0/);
});

test("millilitres become small whole parts, and by how much they are off is said", () => {
  const parts = [
    { parts: 350, abv20: 62.4 },
    { parts: 942.87, abv20: 62.4 },
  ];
  const { typed, notes } = fromBench({ parts, waterTo: null, finalMl: null }, cellar);
  expect(typed.slots.map(({ parts: n }) => n)).toEqual([3, 8]);
  expect(notes).toEqual(["As small whole parts the shares are off by up to 0.2 points of 100."]);
});

test("water among the parts becomes the strength it brings them to", () => {
  const parts = [
    { parts: 3, abv20: 62.4 },
    { parts: 1, abv20: 0 },
  ];
  const { typed } = fromBench({ parts, waterTo: null, finalMl: null }, cellar);
  expect(typed.slots).toHaveLength(1);
  // 3 of 62.4 and 1 of water average to 46.8; shrinking makes it a little more.
  expect(Number.parseFloat(typed.water)).toBeGreaterThan(46.8);
  expect(Number.parseFloat(typed.water)).toBeLessThan(48.5);
});
