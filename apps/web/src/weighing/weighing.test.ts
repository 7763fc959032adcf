import { mixParts, resolvePours } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { describe, expect, test } from "vitest";
import {
  asPouring,
  band,
  choicesAt,
  made,
  poursOf,
  type Pouring,
  pouringOfParts,
  scaleDigits,
  standing,
  WATER,
  without,
} from "./index.ts";

const from = (vesselId: string) => ({ kind: "vessel" as const, vesselId });
const plan: Pouring = {
  v: 1,
  key: "test",
  title: "Two and one",
  batch: null,
  parts: [
    { label: "Kettle", plannedMl: 100 },
    { label: "Wall", plannedMl: 50 },
  ],
  sources: [
    { label: "Kettle", part: 0, abv20: 62.4, from: from("k"), haveMl: 700 },
    { label: "Wall", part: 1, abv20: 46, from: from("w"), haveMl: 450 },
  ],
  waterTo: null,
  capacityMl: null,
  celsius: 20,
  scale: "fine",
  thermometer: "room",
  label: "us",
  tare: "each",
  baseG: 0,
  happened: [],
};
const then = (pouring: Pouring, ...happened: Pouring["happened"]): Pouring => ({
  ...pouring,
  happened: [...pouring.happened, ...happened],
});
const pour = (source: number, g: number) => ({ kind: "pour" as const, source, g });

/** What a scale in conventional air shows for mL of a density: OIML D 28, air 1.2 and weights 8000 kg/m³. */
const inAir = (ml: number, kgPerM3: number): number =>
  (((ml * kgPerM3) / 1000) * (1 - 1.2 / kgPerM3)) / (1 - 1.2 / 8000);

describe("pouring by weight", () => {
  test.each([null, 43])(
    "a bottle that is empty before anything is in: left out, or stopped; water to %s",
    (waterTo) => {
      const empty = then({ ...plan, waterTo }, { kind: "empty", source: 0 });
      const ways = choicesAt(empty, standing(empty));
      expect(ways.map(({ how }) => how)).toEqual(["drift", "stop"]);
      expect(ways[0]?.outcome.offBy).toBeCloseTo(200 / 3, 9);
      expect(ways[1]?.outcome.volumeMl).toBe(0);
      expect(standing(then(empty, { kind: "drift" })).next?.source).toBe(1);
      const none = then(empty, { kind: "drift" }, { kind: "empty", source: 1 });
      expect(choicesAt(none, standing(none)).map(({ how }) => how)).toEqual(["drift"]);
      expect(made(none, standing(then(none, { kind: "drift" })))).toBeNull();
      expect(standing(without(empty)).question).toBeNull();
    },
  );

  test("the first part comes first, in grams that a scale in air shows", () => {
    // OIML R 22, Table II: 40 % vol at 20 °C has 948.05 kg/m³.
    const forty = { ...plan, sources: plan.sources.map((source) => ({ ...source, abv20: 40 })) };
    expect(standing(forty).next?.g).toBeCloseTo(inAir(100, 948.05), 2);
    const { next } = standing(plan);
    expect(next?.source).toBe(0);
    expect(standing(then(plan, pour(0, next?.g ?? 0))).next?.source).toBe(1);
  });

  test("a pour within the scale's band is done; one short of it goes on where it stopped", () => {
    const g = standing(plan).next?.g ?? 0;
    const { by } = band(g, "fine");
    expect(standing(then(plan, pour(0, g - 0.9 * by))).next?.source).toBe(1);
    const { next, question } = standing(then(plan, pour(0, g - 20)));
    expect(question).toBeNull();
    expect(next?.source).toBe(0);
    expect(next?.g).toBeCloseTo(20, 6);
  });

  test("a scale that runs on shows what is in it already, and what it showed at first", () => {
    const running: Pouring = { ...plan, tare: "running", baseG: 412.3 };
    const g = standing(running).next?.g ?? 0;
    expect(standing(running).next?.showsG).toBeCloseTo(412.3 + g, 9);
    const second = standing(then(running, pour(0, g))).next;
    expect(second?.showsG).toBeCloseTo(412.3 + g + (second?.g ?? 0), 9);
    expect(standing(then(plan, pour(0, g))).next?.showsG).toBeCloseTo(second?.g ?? 0, 9);
  });

  test("too much asks what to do; a bit more restores the ratio, as core's resolvePours says", () => {
    const g = standing(plan).next?.g ?? 0;
    const over = then(plan, pour(0, g * 1.1));
    const now = standing(over);
    expect(now.question).toMatchObject({ kind: "over", source: 0 });
    expect(now.question?.g).toBeCloseTo(0.1 * g, 6);
    expect(now.next).toBeNull();
    const choices = choicesAt(over, now);
    expect(choices.map(({ how }) => how)).toEqual(["grow", "drift", "stop"]);
    const solved = resolvePours({
      parts: [
        { parts: 100, abv20: abv20(62.4), pouredMl: millilitres20(110) },
        { parts: 50, abv20: abv20(46), pouredMl: millilitres20(0) },
      ],
      plannedMl: millilitres20(150),
    });
    const [grow, drift, stop] = choices;
    expect(solved.ok && solved.mixture.abv20).toBeCloseTo(grow?.outcome.abv20 ?? 0, 9);
    expect(solved.ok && solved.mixture.volumeMl).toBeCloseTo(grow?.outcome.volumeMl ?? 0, 6);
    expect(grow?.outcome.offBy).toBe(0);
    expect(drift?.outcome.offBy).toBeCloseTo(100 * (110 / 160 - 2 / 3), 6);
    expect(stop?.outcome.volumeMl).toBeCloseTo(110, 6);
    expect(standing(then(over, { kind: "grow" })).next?.ml20).toBeCloseTo(55, 6);
    expect(standing(then(over, { kind: "drift" })).next?.ml20).toBeCloseTo(50, 6);
    expect(standing(then(over, { kind: "stop" })).finished).toBe(true);
  });

  test("a second part too large asks for more of the first again", () => {
    const g = standing(plan).next?.g ?? 0;
    const first = then(plan, pour(0, g));
    const second = (standing(first).next?.g ?? 0) * 1.2;
    const grown = standing(then(first, pour(1, second), { kind: "grow" }));
    expect(grown.next?.source).toBe(0);
    expect(grown.next?.ml20).toBeCloseTo(20, 6);
  });

  test("a vessel without room gets the nearest that fits, and says by how much the share is off", () => {
    const tight = { ...plan, capacityMl: 155 };
    const over = then(tight, pour(0, (standing(plan).next?.g ?? 0) * 1.1));
    const [grow] = choicesAt(over, standing(over));
    expect(grow?.outcome.volumeMl).toBeCloseTo(155, 4);
    expect(grow?.outcome.offBy).toBeGreaterThan(1);
    expect(grow?.outcome.overMl).toBe(0);
  });

  test("water comes last and lands on the strength, whatever was poured", () => {
    const wet = { ...plan, waterTo: 50 };
    const drifted = then(wet, pour(0, (standing(wet).next?.g ?? 0) * 1.1), { kind: "drift" });
    const both = then(drifted, pour(1, standing(drifted).next?.g ?? 0));
    const { next } = standing(both);
    expect(next?.source).toBe(WATER);
    const done = standing(then(both, pour(WATER, next?.g ?? 0)));
    expect(done.finished).toBe(true);
    expect(made(both, done)?.strength.exact).toBeCloseTo(50, 9);
  });

  test("too much water: a bit more of everything brings the strength back", () => {
    const wet = { ...plan, waterTo: 50 };
    const one = then(wet, pour(0, standing(wet).next?.g ?? 0));
    const two = then(one, pour(1, standing(one).next?.g ?? 0));
    const over = then(two, pour(WATER, (standing(two).next?.g ?? 0) * 1.5));
    expect(standing(over).question).toMatchObject({ kind: "over", source: WATER });
    const [grow, drift] = choicesAt(over, standing(over));
    expect(grow?.outcome.abv20).toBeCloseTo(50, 9);
    expect(drift?.outcome.abv20).toBeLessThan(49);
    let pouring = then(over, { kind: "grow" });
    for (let turn = 0; turn < 5 && standing(pouring).next !== null; turn++) {
      const { next } = standing(pouring);
      pouring = then(pouring, pour(next?.source ?? 0, next?.g ?? 0));
    }
    expect(standing(pouring).finished).toBe(true);
    // Less than the scale can tell is not poured: a tenth of a gram or two.
    expect(made(pouring, standing(pouring))?.strength.exact).toBeCloseTo(50, 1);
  });

  test("a bottle that ran dry: make less of it in the same ratio, or go on", () => {
    const g = standing(plan).next?.g ?? 0;
    const dry = then(plan, pour(0, g / 2), { kind: "empty", source: 0 });
    expect(standing(dry).question).toMatchObject({ kind: "short", source: 0 });
    expect(standing(then(dry, { kind: "grow" })).next?.ml20).toBeCloseTo(25, 6);
    expect(standing(then(dry, { kind: "drift" })).next?.ml20).toBeCloseTo(50, 6);
  });

  test("a way that comes to the same as leaving it so is not offered", () => {
    const wet = { ...plan, waterTo: 50 };
    const dry = then(wet, pour(0, 60), { kind: "empty", source: 0 }, { kind: "grow" });
    const both = then(dry, pour(1, standing(dry).next?.g ?? 0));
    const over = then(both, pour(WATER, (standing(both).next?.g ?? 0) + 15));
    // Nothing more of the first can follow the water, and nothing else is left to pour.
    expect(choicesAt(over, standing(over)).map(({ how }) => how)).toEqual(["drift"]);
  });

  test("a second bottle of the same whiskey takes over when the first is empty by the book", () => {
    const two: Pouring = {
      ...plan,
      sources: [
        { label: "Kettle, opened", part: 0, abv20: 62.4, from: from("k1"), haveMl: 60 },
        { label: "Kettle, sealed", part: 0, abv20: 62.4, from: from("k2"), haveMl: 700 },
        { label: "Wall", part: 1, abv20: 46, from: from("w"), haveMl: 450 },
      ],
    };
    expect(standing(two).next?.ml20).toBeCloseTo(60, 9);
    // It holds 65 mL after all: not too much of the part.
    const more = then(two, pour(0, ((standing(two).next?.g ?? 0) * 65) / 60));
    expect(standing(more)).toMatchObject({ question: null, next: { source: 1 } });
    expect(standing(more).next?.ml20).toBeCloseTo(35, 6);
  });

  test("undone: the last pour and what was decided on it", () => {
    const over = then(plan, pour(0, 120), { kind: "grow" });
    expect(without(over)).toEqual(plan);
    expect(without(plan)).toEqual(plan);
  });

  test("a reload reads the same pouring back; anything else is no pouring", () => {
    const over = then(plan, pour(0, 120), { kind: "grow" });
    expect(asPouring(JSON.stringify(over))).toEqual(over);
    for (const text of [null, "", "null", "{}", '{"v":1,"key":"x"}', '{"v":2,"key":"x"}', "[1]"]) {
      expect(asPouring(text)).toBeNull();
    }
  });

  test("a batch gets the mass of each bottle, freed of the air, water last; the bench gets nothing", () => {
    const wet = { ...plan, waterTo: 50 };
    const done = standing(then(wet, pour(WATER, 10), pour(0, 89.43), pour(1, 40), pour(0, 5)));
    const pours = poursOf(wet, done);
    expect(pours.map(({ label }) => label)).toEqual(["Kettle", "Wall", "water"]);
    // In air a scale shows about 0.12 % less of whiskey than its mass, 0.105 % of water (OIML D 28).
    expect((pours[0]?.massG ?? 0) / 94.43).toBeCloseTo(1.00119, 4);
    expect((pours[2]?.massG ?? 0) / 10).toBeCloseTo(1.00105, 4);
    const bench = { ...wet, sources: wet.sources.map((source) => ({ ...source, from: null })) };
    expect(poursOf(bench, done).map(({ label }) => label)).toEqual(["water"]);
  });

  test("parts from the bench fill the final volume in their ratio", () => {
    const done = pouringOfParts(
      {
        parts: [
          { parts: 2, abv20: 62.4 },
          { parts: 1, abv20: 46 },
        ],
        waterTo: null,
        finalMl: null,
      },
      700,
    );
    if (!done.ok) throw new Error(done.why);
    const [a, b] = done.parts;
    expect((a?.plannedMl ?? 0) / (b?.plannedMl ?? 1)).toBeCloseTo(2, 9);
    const sum = (a?.plannedMl ?? 0) + (b?.plannedMl ?? 0);
    const mixed = mixParts(
      [
        { parts: 2, abv20: abv20(62.4) },
        { parts: 1, abv20: abv20(46) },
      ],
      millilitres20(sum),
    );
    expect(mixed.volumeMl).toBeCloseTo(700, 6);
  });

  test("no part can be brought up with water: a no with the nearest", () => {
    const done = pouringOfParts({ parts: [{ parts: 1, abv20: 46 }], waterTo: 60, finalMl: null }, 700);
    expect(done).toMatchObject({ ok: false, nearest: "46.0\u00a0%\u00a0vol" });
  });
});

test("a band is at least a step of the display, and wider for more and for a coarser scale", () => {
  expect(band(437, "kitchen").by).toBeGreaterThanOrEqual(1);
  expect(band(437, "kitchen").by).toBeGreaterThan(band(437, "fine").by);
  expect(band(437, "fine").by).toBeGreaterThan(band(437, "pocket").by);
  expect(band(0.2, "fine").low).toBe(0);
  expect(scaleDigits(-0.01, "fine")).toBe("0.0");
  expect(scaleDigits(437.216, "pocket")).toBe("437.22");
});
