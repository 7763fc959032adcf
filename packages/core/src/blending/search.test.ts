import { expect, test } from "vitest";
import { bestByEnumeration } from "./fixtures/every-recipe.ts";
import { problem, shelf } from "./fixtures/shelf.ts";
import { seeded } from "./fixtures/seeded.ts";
import { randomProblem } from "./fixtures/random-problem.ts";
import type { Problem } from "./problem.ts";
import { search, startSearch } from "./search.ts";

const PROBLEMS = 60;
const some = (): readonly Problem[] =>
  Array.from({ length: PROBLEMS }, (_, seed) =>
    // Of six bottles two pairs are chosen one below the other.
    randomProblem(
      seeded(1000 + seed),
      seed % 4 === 3 ? { n: 9, bottles: 6, parts: 7 } : { n: 14, bottles: 4, parts: 8 },
    ),
  );

test("S1: parts 2 : 2 are not listed beside 1 : 1", () => {
  for (const { parts } of search(problem(), 100).recipes) {
    const divides = (d: number): boolean => parts.every(({ parts: own }) => own % d === 0);
    expect([2, 3, 4, 5, 6, 7, 8, 9].some(divides)).toBe(false);
  }
});

test("S1: of recipes that tie, fewer bottles come first, then fewer parts, then earlier whiskeys", () => {
  const twins = [shelf[0]!, { ...shelf[0]!, id: "twin" }];
  const { recipes } = search(problem([], { whiskeys: twins, maxParts: 3, maxBottles: 2 }));
  expect(recipes.map(({ parts }) => parts.map(({ id, parts: own }) => `${own} ${id}`).join(" + "))).toEqual([
    "1 peat",
    "1 twin",
    "1 peat + 1 twin",
    "2 peat + 1 twin",
    "1 peat + 2 twin",
  ]);
  expect(new Set(recipes.map(({ distance }) => distance.toFixed(11))).size).toBe(1);
});

test("S2: stopped at any step, no recipe outside the list scores below the bound, which never falls", {
  timeout: 120_000,
}, () => {
  let early = 0;
  for (const one of some()) {
    const all = bestByEnumeration(one, 100_000);
    const running = startSearch(one, 5);
    let last = -Infinity;
    for (let steps = 0; steps < 400; steps += 1) {
      const { done, bound, best, gap } = running.step(1);
      const { recipes, provenOptimal } = running.result();
      expect(provenOptimal).toBe(done);
      expect(bound).toBeGreaterThanOrEqual(last - 1e-9);
      last = bound;
      if (done) break;
      early += 1;
      const listed = new Set(
        recipes.map(({ parts }) => JSON.stringify(parts.map(({ id, parts: own }) => [id, own]))),
      );
      const outside = all.find(({ parts }) => !listed.has(JSON.stringify(parts)));
      expect(outside?.score ?? Infinity).toBeGreaterThanOrEqual(bound - 1e-8);
      expect(gap).toBe((best ?? Infinity) - bound);
    }
  }
  expect(early).toBeGreaterThan(PROBLEMS);
});

test("S3: the steps it is cut into change neither the list nor the nodes", { timeout: 60_000 }, () => {
  for (const one of some().slice(0, 20)) {
    const small = startSearch(one);
    while (!small.step(1).done);
    const large = startSearch(one);
    while (!large.step(1000).done);
    expect(small.result()).toEqual(large.result());
    expect(search(one)).toEqual(large.result());
  }
});

test("S4: a target met exactly is found at a distance of 0, with rounding and under every distance", () => {
  const target = {
    profile: { smoke: (8 * 2 + 0 + 1) / 4, honey: (2 * 2 + 3 + 5) / 4, spice: (4 + 9 + 4) / 4 },
  };
  for (const distance of ["root mean square", "absolute", "expected"] as const) {
    const { recipes, provenOptimal } = search(problem([], { target, distance }), 1);
    expect(provenOptimal).toBe(true);
    expect(recipes[0]!.distance).toBeLessThan(1e-12);
    expect(recipes[0]!.parts).toEqual([
      { id: "peat", parts: 2 },
      { id: "rye", parts: 1 },
      { id: "wine cask", parts: 1 },
    ]);
    expect(recipes[0]!.pricePerLitre).toBeCloseTo((2 * 90 + 50 + 120) / 4, 12);
    expect(recipes[0]!.youngestYears).toBe(4);
  }
});

test("S4: a strong minor part weighs more under a power law", () => {
  const target = { profile: { smoke: 4 } };
  const [plain] = search(problem([], { target, maxBottles: 2 }), 1).recipes;
  const [bent] = search(
    problem([], { target: { ...target, exponents: { smoke: 2 } }, maxBottles: 2 }),
    1,
  ).recipes;
  const peat = (recipe: typeof plain): number =>
    recipe!.parts.find(({ id }) => id === "peat")!.parts /
    recipe!.parts.reduce((sum, { parts }) => sum + parts, 0);
  expect(plain!.distance).toBeLessThan(1e-12);
  expect(peat(plain)).toBeCloseTo(0.5, 12);
  // 8 sqrt(1/4) = 4: a quarter is enough.
  expect(bent!.distance).toBeLessThan(1e-12);
  expect(peat(bent)).toBeCloseTo(0.25, 12);
});

test("S5: an unknown value is 5, is reported, and counts in the expected distance", () => {
  const whiskeys = [{ ...shelf[0]!, profile: { smoke: null, honey: 5 } }];
  const target = { profile: { smoke: 5, honey: 5, spice: 0 } };
  const plain = search(problem([], { whiskeys, target }));
  expect(plain.recipes[0]!.distance).toBe(0);
  expect(plain.unknown).toEqual([{ id: "peat", attribute: "smoke" }]);
  const expected = search(problem([], { whiskeys, target, distance: "expected" }));
  expect(expected.recipes[0]!.distance).toBeCloseTo(10 / Math.sqrt(12) / Math.sqrt(3), 12);
});

test.each([
  ["maxBottles", { maxBottles: 0 }],
  ["maxParts", { maxParts: 1.5 }],
  ["target smoke", { target: { profile: { smoke: 11 } } }],
  ["weights", { target: { profile: { smoke: 1 }, weights: { smoke: 0 } } }],
  ["exponent of smoke", { target: { profile: { smoke: 1 }, exponents: { smoke: 0 } } }],
  ["whiskeys requires ids that differ", { whiskeys: [shelf[0]!, shelf[0]!] }],
  ["target requires at least one attribute", { target: { profile: {} } }],
])("S6: %s is named", (what, others) => {
  expect(() => search(problem([], others))).toThrow(what);
  expect(() => search(problem([], others))).toThrow(RangeError);
});

test("S1: five and six bottles, by enumeration", { timeout: 120_000 }, () => {
  for (let seed = 1; seed <= 12; seed += 1) {
    const one = {
      ...randomProblem(seeded(seed + 77), { n: 9, bottles: 3, parts: 7 }),
      maxBottles: 5 + (seed % 2),
      maxParts: 8,
    };
    const expected = bestByEnumeration(one, 20);
    expect(search(one).recipes.map(({ parts }) => parts.map(({ id, parts: own }) => [id, own]))).toEqual(
      expected.map(({ parts }) => parts),
    );
  }
});
