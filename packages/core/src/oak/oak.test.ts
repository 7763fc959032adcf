import fc from "fast-check";
import { expect, test } from "vitest";
import { OAK_DENSITY, oakDose, pieceGeometry, soakedUp } from "./index.ts";

const spiral = { shape: "spiral", outer: 2.5, core: 1, fin: 0.3, pitch: 0.8, length: 10 } as const;

test("W1 a spiral's area is that of its own surface, cut into small triangles", () => {
  // Both faces of the fin as a mesh: a check by another way than the closed form.
  const { outer, core, fin, pitch, length } = spiral;
  const point = (r: number, turn: number): readonly [number, number, number] => [
    r * Math.cos(turn),
    r * Math.sin(turn),
    (pitch * turn) / (2 * Math.PI),
  ];
  const area3 = (
    a: readonly [number, number, number],
    b: readonly [number, number, number],
    c: readonly [number, number, number],
  ): number => {
    const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    return Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
  };
  let face = 0;
  const [radii, steps] = [60, 400];
  for (let i = 0; i < radii; i += 1) {
    const [r0, r1] = [i, i + 1].map((n) => core / 2 + ((outer - core) / 2) * (n / radii)) as [number, number];
    for (let k = 0; k < steps; k += 1) {
      const [t0, t1] = [k, k + 1].map((n) => (2 * Math.PI * n) / steps) as [number, number];
      face += area3(point(r0, t0), point(r1, t0), point(r1, t1));
      face += area3(point(r0, t0), point(r1, t1), point(r0, t1));
    }
  }
  const turns = length / pitch;
  const share = fin / pitch;
  const rim = Math.PI * outer * length * share;
  const stem = Math.PI * core * length * (1 - share);
  const ends = 2 * (Math.PI * (core / 2) ** 2 + share * Math.PI * ((outer / 2) ** 2 - (core / 2) ** 2));
  const area = 2 * turns * face + rim + stem + ends;
  expect(Math.abs(pieceGeometry(spiral).areaCm2 / area - 1)).toBeLessThan(1e-3);
});

test("W1 a spiral whose fin is flat rings has the area of rings", () => {
  // Pitch and fin very small against the radius: each face is a flat ring.
  const { areaCm2 } = pieceGeometry({
    shape: "spiral",
    outer: 4,
    core: 1,
    fin: 0.01,
    pitch: 0.02,
    length: 4,
  });
  const ring = Math.PI * (2 ** 2 - 0.5 ** 2);
  const flat = 2 * 200 * ring + Math.PI * 4 * (0.5 * 4 + 0.5 * 1) + 2 * (Math.PI * 0.25 + 0.5 * ring);
  expect(Math.abs(areaCm2 / flat - 1)).toBeLessThan(1e-4);
});

test("W5 grams from a size carry the range of oak's density; chips are weighed", () => {
  const { grams, volumeCm3 } = pieceGeometry({ shape: "stave", cm: [0.7, 2.5, 15] });
  expect([grams.low, grams.likely, grams.high]).toEqual(
    [OAK_DENSITY.low, OAK_DENSITY.likely, OAK_DENSITY.high].map((density) => density * volumeCm3),
  );
  const chips = pieceGeometry({ shape: "chips", cm: [0.2, 1, 1], grams: 3.4 });
  expect(chips.grams).toEqual({ low: 3.4, likely: 3.4, high: 3.4 });
  // 24.64 such chips give 750 mL a cask's contact (reference table: 69 cm²).
  expect(chips.areaCm2).toBeCloseTo(70, 0);
});

test("W5 what the wood soaks up and can give are ranges that say what they rest on", () => {
  const { ml, firstDaysMl, extractAtMostG } = soakedUp({ low: 10.9, likely: 10.9, high: 10.9 });
  for (const known of [ml, firstDaysMl, extractAtMostG]) {
    expect(known.low).toBeLessThan(known.likely);
    expect(known.likely).toBeLessThan(known.high);
  }
  expect(ml.low).toBeCloseTo(5.45, 10);
  expect(ml.high).toBeCloseTo(10.9, 10);
  expect(ml.how).toContain("no measured value");
  expect(firstDaysMl.how).toContain("no source");
  // Of wood that was not weighed, the lightest and the heaviest it may be.
  expect(soakedUp({ low: 9, likely: 10, high: 12 }).ml).toMatchObject({ low: 4.5, likely: 7.5, high: 12 });
});

test("W6 twice the pieces, twice the wood; twice the liquid, half a litre's", () => {
  const length = fc.double({ min: 0.05, max: 50, noNaN: true });
  fc.assert(
    fc.property(length, length, length, fc.integer({ min: 1, max: 50 }), (a, b, c, count) => {
      const one = pieceGeometry({ shape: "cube", cm: [a, b, c] });
      const many = pieceGeometry({ shape: "cube", cm: [c, a, b] }, count);
      expect(many.areaCm2 / (one.areaCm2 * count)).toBeCloseTo(1, 12);
      expect(many.grams.likely / (one.grams.likely * count)).toBeCloseTo(1, 12);
      const dose = (litres: number) => oakDose({ areaCm2: one.areaCm2, grams: one.grams.likely, litres });
      expect(dose(2).areaPerLitre * 2).toBeCloseTo(dose(1).areaPerLitre, 8);
    }),
  );
});

test("W7 what is no body is refused with what and where", () => {
  expect(() => pieceGeometry({ ...spiral, fin: 0.9 })).toThrow(
    "fin of a spiral requires less than its pitch 0.8 cm, got 0.9 cm",
  );
  expect(() => pieceGeometry({ ...spiral, core: 2.5 })).toThrow("core of a spiral requires");
  expect(() => pieceGeometry({ shape: "stick", cm: [1, 0, 16] })).toThrow(
    "a block requires lengths of more than 0 cm, got 0 cm",
  );
  expect(() => pieceGeometry({ shape: "stick", cm: [1, 1, 16] }, 1.5)).toThrow("whole number from 1");
  expect(() => pieceGeometry({ shape: "chips", cm: [0.2, 1, 1], grams: 0 })).toThrow("grams of chips");
  expect(() => oakDose({ areaCm2: 66, grams: -1, litres: 0.75 })).toThrow(
    "grams of oak requires 0 g or more",
  );
  expect(() => oakDose({ areaCm2: Number.NaN, grams: 1, litres: 0.75 })).toThrow("area of oak");
  expect(() => soakedUp({ low: 2, likely: 1, high: 3 })).toThrow("rising order, got 2, 1, 3 g");
  expect(() => oakDose({ areaCm2: 66, grams: 1, litres: 0 })).toThrow("more than 0 L");
});
