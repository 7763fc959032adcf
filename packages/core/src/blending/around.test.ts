import { expect, test } from "vitest";
import { diverse, unlikeness } from "./diverse.ts";
import { bestByEnumeration, eachRecipe, distanceOf, keeps } from "./fixtures/every-recipe.ts";
import { randomProblem } from "./fixtures/random-problem.ts";
import { seeded } from "./fixtures/seeded.ts";
import { problem, shelf } from "./fixtures/shelf.ts";
import { priceOfRules } from "./price-of-rules.ts";
import { search } from "./search.ts";
import { type Traded, tradeOff } from "./trade-off.ts";
import { neverNeeded, whatToBuy } from "./what-to-buy.ts";

test.each(["price", "bottles", "parts", "age"] as const)(
  "T1: closeness against %s is what enumeration gives",
  (traded: Traded) => {
    let points = 0;
    for (let seed = 1; seed <= 25; seed += 1) {
      const base = randomProblem(seeded(seed + 300), { n: 9, bottles: 3, parts: 6 });
      const one = { ...base, rules: base.rules.slice(0, 1), goals: {} };
      const all: { readonly distance: number; readonly value: number }[] = [];
      eachRecipe(one, one.whiskeys, (lines) => {
        if (!one.rules.every((rule) => keeps(rule, lines))) return;
        const sum = lines.reduce((total, { parts }) => total + parts, 0);
        const price =
          lines.reduce(
            (total, { whiskey, parts }) => total + parts * (whiskey.pricePerLitre ?? Number.NaN),
            0,
          ) / sum;
        const age = Math.min(...lines.map(({ whiskey }) => whiskey.ageYears ?? Number.NaN));
        const value = { price, bottles: lines.length, parts: sum, age: -age }[traded];
        if (!Number.isNaN(value)) all.push({ distance: distanceOf(one, lines).distance, value });
      });
      const better = (a: number, b: number): boolean => a < b - 1e-9;
      const expected = all.filter(
        (a) =>
          !all.some(
            (b) =>
              (better(b.distance, a.distance) && !better(a.value, b.value)) ||
              (better(b.value, a.value) && !better(a.distance, b.distance)),
          ),
      );
      const distinct = [...new Set(expected.map(({ distance }) => distance.toFixed(8)))].toSorted(
        (a, b) => +a - +b,
      );
      const found = tradeOff(one, traded);
      expect(found.complete).toBe(true);
      expect(
        found.points.map(({ distance }) => distance.toFixed(8)),
        `problem ${seed}`,
      ).toEqual(distinct);
      points += distinct.length;
    }
    expect(points).toBeGreaterThan(20);
  },
);

test("T2: a rule costs what enumeration says it costs", () => {
  const ruled = problem([
    { kind: "onlyWoods", species: ["American oak"] },
    { kind: "minAge", years: 6 },
    { kind: "maxPricePerLitre", price: 500 },
  ]);
  const best = bestByEnumeration(ruled, 1)[0]!.score;
  const prices = priceOfRules(ruled);
  for (const [x, { costs }] of prices.entries()) {
    const rules = ruled.rules.filter((_, y) => y !== x);
    expect(costs).toBeCloseTo(best - bestByEnumeration({ ...ruled, rules }, 1)[0]!.score, 10);
  }
  expect(prices[0]!.costs).toBeGreaterThan(0.1);
  expect(prices[1]!.costs).toBeGreaterThan(0.1);
});

test("T2: without any recipe that keeps them all, a rule has no price, only what is possible without it", () => {
  const [age, price] = priceOfRules(
    problem([
      { kind: "minAge", years: 18 },
      { kind: "maxPricePerLitre", price: 60 },
    ]),
  );
  expect(age!.costs).toBeNull();
  expect(price!.costs).toBeNull();
  expect(age!.without).not.toBeNull();
  expect(price!.without?.parts).toEqual([{ id: "wine cask", parts: 1 }]);
});

test("B1: the candidate that helps most comes first, and one that does not help gains nothing", () => {
  const [peat, ...others] = shelf;
  const short = problem([], { whiskeys: others });
  const useless = { ...shelf[5]!, id: "plainer", profile: { smoke: 10, honey: 0, spice: 0, oak: 10 } };
  const targets = [short.target, { profile: { smoke: 6, honey: 3 } }];
  const [first, second] = whatToBuy(short, targets, [useless, peat!]);
  expect(first!.id).toBe("peat");
  let gain = 0;
  for (const target of targets) {
    const one = { ...short, target };
    const all = { ...one, whiskeys: [...others, peat!] };
    gain += bestByEnumeration(one, 1)[0]!.score - bestByEnumeration(all, 1)[0]!.score;
  }
  expect(first!.gain).toBeCloseTo(gain, 10);
  expect(second!.gain).toBeLessThan(first!.gain);
});

test("B2: taking what is never needed off the shelf changes nothing of the lists", () => {
  const targets = [problem().target, { profile: { smoke: 1, honey: 6, spice: 4 } }];
  const never = neverNeeded(problem(), targets, 3);
  expect(never.length).toBeGreaterThan(0);
  for (const gone of [never, ...never.map((id) => [id])])
    for (const target of targets) {
      const whiskeys = shelf.filter(({ id }) => !gone.includes(id));
      expect(search(problem([], { target, whiskeys }), 3).recipes).toEqual(
        search(problem([], { target }), 3).recipes,
      );
    }
});

test("D1: a diverse list begins with the best and keeps its distance", () => {
  const { recipes } = search(problem(), 200);
  const chosen = diverse(problem(), recipes, 0.3);
  expect(chosen[0]).toBe(recipes[0]);
  expect(chosen.length).toBeGreaterThan(2);
  for (const [x, a] of chosen.entries())
    for (const b of chosen.slice(0, x))
      expect(unlikeness(problem(), a, b)).toBeGreaterThanOrEqual(0.3 - 1e-12);
  const missing = recipes.filter((recipe, x) => {
    const before = chosen.filter((other) => recipes.indexOf(other) < x);
    return !chosen.includes(recipe) && !before.some((other) => unlikeness(problem(), recipe, other) < 0.3);
  });
  expect(missing).toEqual([]);
});
