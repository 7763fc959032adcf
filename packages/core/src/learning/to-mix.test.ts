import { expect, test } from "vitest";
import { sameParts, toMix } from "./to-mix.ts";

test("a recipe is the same however many times its parts are taken", () => {
  expect(sameParts({ malt: 2, rye: 1 }, { malt: 4, rye: 2 })).toBe(true);
  expect(sameParts({ malt: 2 }, { malt: 1, rye: 0 })).toBe(true);
  expect(sameParts({ malt: 2, rye: 1 }, { malt: 1, rye: 2 })).toBe(false);
});

test("what stands ready is poured as it is, what does not is mixed once", () => {
  const flight = [
    { malt: 2, rye: 2 },
    { malt: 3, oats: 1, rye: 0 },
    { rye: 1 },
    { malt: 6, oats: 2 },
    { rye: 1, oats: 2 },
  ];
  const ready = [
    { vesselId: "flask", parts: { malt: 1, rye: 1 } },
    { vesselId: "another flask", parts: { malt: 1, rye: 1 } },
    { vesselId: "bottle", parts: { rye: 1 } },
  ];
  expect(toMix(flight, ready)).toEqual({
    whiskeys: ["malt", "oats", "rye"],
    mixes: [
      [3, 1, 0],
      [0, 2, 1],
    ],
    glasses: [{ vesselId: "flask" }, { trial: 1 }, { vesselId: "bottle" }, { trial: 1 }, { trial: 2 }],
  });
});
