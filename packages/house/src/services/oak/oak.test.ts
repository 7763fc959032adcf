import { createClient } from "../../protocol/index.ts";
import { openReckoner } from "../../open-reckoner.ts";
import { expect, test } from "vitest";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://reckoner.test");

test("W3 66 cm² and 10.9 g in 750 mL", async () => {
  const dose = await client("oakDose", { body: { areaCm2: 66, grams: 10.9, volumeMl: 750 } });
  expect(dose.areaPerLitre).toBeCloseTo(88, 10);
  expect(dose.caskRatio).toBeCloseTo(0.9565217, 6);
  expect(dose.gramsPerLitre).toBeCloseTo(14.5333333, 6);
  expect(dose.soaksUpMl?.how).toContain("no measured value");
  expect(dose.cautions.join(" ")).toMatch(/food-grade[^]*lead crystal[^]*flame[^]*home/);
});

test("W2 the same from a piece; a spiral from its own five lengths", async () => {
  const stick = await client("oakDose", {
    body: { piece: { shape: "stick", cm: [1, 1, 16] }, volumeMl: 750 },
  });
  expect(stick.areaCm2).toBe(66);
  expect(stick.piecesAsInCask).toBeCloseTo(69 / 66, 10);
  expect(stick.grams).toMatchObject({ weighed: false });
  expect(stick.thicknessCm).toBe(1);
  const spiral = await client("oakDose", {
    body: {
      piece: { shape: "spiral", outer: 2.5, core: 1, fin: 0.3, pitch: 0.8, length: 10 },
      volumeMl: 750,
    },
  });
  expect(spiral.areaCm2).toBeGreaterThan(100);
});

test("W7 what is asked twice, or is no body, is refused at its place", async () => {
  const spiral = { shape: "spiral", outer: 2.5, core: 3, fin: 0.3, pitch: 0.8, length: 10 } as const;
  for (const [body, path, code] of [
    [{ volumeMl: 750 }, "areaCm2", "area_or_piece"],
    [{ areaCm2: 66, piece: spiral, volumeMl: 750 }, "areaCm2", "area_or_piece"],
    [{ areaCm2: 66, count: 2, volumeMl: 750 }, "count", "count_without_piece"],
    [{ piece: spiral, volumeMl: 750 }, "piece", "not_a_body"],
    [
      { piece: { shape: "chips", cm: [0.2, 1, 1], grams: 3 }, grams: 4, volumeMl: 750 },
      "grams",
      "chips_are_weighed",
    ],
  ] as const) {
    const [issue] = (await refusalOf(client("oakDose", { body: body as never }))).issues;
    expect(issue).toMatchObject({ code, path: [path] });
  }
});
