import type { KeptUp } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { headlineOf, layersOf, printHalfLife, ticksOf } from "./story.ts";

const addition = (left: number) => ({
  transferId: "t",
  at: "2026-01-01T00:00:00.000Z",
  from: "a bottle",
  ml: 100,
  liquidIds: ["a"],
  left,
  leftMl: 100 * left,
  halfLifeDays: null,
});
const point = (volumeMl: number, parts: readonly number[]) => ({
  at: "2026-01-01T00:00:00.000Z",
  volumeMl,
  abv20: 46,
  parts: [...parts],
  youngestYears: null,
});
const told = (more: Partial<KeptUp>): KeptUp => ({
  vesselId: "v",
  label: "Jug",
  capacityMl: 1000,
  liquids: ["a", "b", "c", "water"].map((liquidId) => ({
    liquidId,
    label: `Tide ${liquidId}`,
    ageYears: null,
  })),
  additions: [addition(0.12), addition(0.6)],
  pours: 1,
  pouredMl: 30,
  course: [point(500, [1, 0, 0, 0]), point(800, [0.3, 0.5, 0.1, 0.1])],
  now: {} as KeptUp["now"],
  ...more,
});

test("the headline says what is most of it and what became of the first", () => {
  expect(headlineOf(told({}))).toBe(
    "50\u00a0% of it is Tide b by now; 12\u00a0% of the first that went in is still there.",
  );
  expect(headlineOf(told({ additions: [addition(0.8)], course: [point(400, [1, 0, 0, 0])] }))).toBe(
    "Tide a is all of it; 80\u00a0% of what went in is still there.",
  );
  expect(headlineOf(told({ course: [point(0, [0, 0, 0, 0])] }))).toBe("Nothing is in it now.");
});

test("half-lives in days, then in months", () => {
  expect([null, 0.2, 1, 40, 365].map(printHalfLife)).toEqual([
    "more than half is still there",
    "half gone within a day",
    "half gone after 1 day",
    "half gone after 40 days",
    "half gone after 12 months",
  ]);
});

test("moments are named once, the first and the last with them", () => {
  const at = (text: string) => Date.parse(`${text}T00:00:00Z`);
  expect(ticksOf(at("2016-11-01"), at("2026-11-01")).map(({ says }) => says)).toEqual([
    "Nov 2016",
    "Mar 2020",
    "Jul 2023",
    "Nov 2026",
  ]);
  expect(ticksOf(at("2026-11-01"), at("2026-11-01")).map(({ says }) => says)).toEqual(["1 Nov"]);
});

test("the largest liquids have a layer of their own, the rest share one", () => {
  const { layers, points } = layersOf(told({}), 3);
  expect(layers.map(({ label }) => label)).toEqual(["Tide a", "Tide b", "2 others"]);
  expect(points[1]?.parts.map((part) => Number(part.toFixed(9)))).toEqual([0.3, 0.5, 0.2]);
  expect(layersOf(told({}), 6).layers.map(({ water }) => water)).toEqual([false, false, false, true]);
});
