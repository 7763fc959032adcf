import { expect, test } from "vitest";
import { randomProblem } from "./fixtures/random-problem.ts";
import { seeded } from "./fixtures/seeded.ts";
import { problem, shelf } from "./fixtures/shelf.ts";
import type { Problem } from "./problem.ts";
import { intensityOf } from "./profile-values.ts";
import type { FoundRecipe } from "./recipe.ts";
import { cannotTellApart, expectedDistance, probabilityCloser } from "./robust.ts";
import { search } from "./search.ts";
import { sharesOf } from "./spread-of.ts";

const rng = seeded(9);
const uniform = (): number => (rng.below(2 ** 32) + 0.5) / 2 ** 32;
const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());

/** Squared distances of two recipes for one drawing of all profiles. */
function drawn(one: Problem, a: FoundRecipe, b: FoundRecipe): readonly [number, number] {
  const shares = [sharesOf(one, a), sharesOf(one, b)] as const;
  const sums = [0, 0] as [number, number];
  let weights = 0;
  for (const [name, t] of Object.entries(one.target.profile)) {
    const weight = one.target.weights?.[name] ?? 1;
    weights += weight;
    const means = [-t, -t];
    for (const whiskey of one.whiskeys) {
      const [s, u] = [shares[0].get(whiskey.id) ?? 0, shares[1].get(whiskey.id) ?? 0];
      if (s + u === 0) continue;
      const { value, sd } = intensityOf(whiskey, name);
      const truth = value + sd * normal();
      means[0]! += s * truth;
      means[1]! += u * truth;
    }
    sums[0] += weight * means[0]! ** 2;
    sums[1] += weight * means[1]! ** 2;
  }
  return [sums[0] / weights, sums[1] / weights];
}

/** The same under power laws, where a level below nothing is nothing. */
function bentDrawn(one: Problem, a: FoundRecipe, b: FoundRecipe): readonly [number, number] {
  const sums: [number, number] = [0, 0];
  for (const [name, t] of Object.entries(one.target.profile)) {
    const truth = new Map(
      one.whiskeys.map((whiskey) => {
        const { value, sd } = intensityOf(whiskey, name);
        return [whiskey.id, Math.max(0, value + sd * normal())];
      }),
    );
    const e = one.target.exponents?.[name] ?? 1;
    for (const [i, recipe] of [a, b].entries()) {
      const shares = [...sharesOf(one, recipe)];
      const mixed =
        e === Infinity
          ? Math.max(...shares.map(([id]) => truth.get(id) ?? 0))
          : shares.reduce((sum, [id, share]) => sum + share * (truth.get(id) ?? 0) ** e, 0) ** (1 / e);
      sums[i as 0 | 1] += (mixed - t) ** 2 / 8;
    }
  }
  return sums;
}

test("U1, U2: expectation and chance agree with drawing the profiles", { timeout: 300_000 }, () => {
  const long = process.env["PARTSPROOF_LONG"] === "1";
  const draws = long ? 100_000 : 10_000;
  let compared = 0;
  let largest = 0;
  for (let seed = 1; compared < 20; seed += 1) {
    const base = randomProblem(seeded(seed + 500), { n: 14, bottles: 4, parts: 8 });
    const names = ["a0", "a1", "a2", "a3", "a4", "a5", "a6", "a7"];
    const whiskeys = base.whiskeys.map((whiskey) => ({
      ...whiskey,
      profile: Object.fromEntries(
        names.map((name) => [name, { value: 10 * uniform(), sd: 0.3 + 2 * uniform() }]),
      ),
    }));
    const target = { profile: Object.fromEntries(names.map((name) => [name, 10 * uniform()])) };
    const one: Problem = {
      ...base,
      whiskeys,
      target,
      rules: [],
      distance: "expected",
      goals: {},
      maxBottles: 3,
      maxParts: 6,
    };
    const { recipes } = search(one, 60);
    const [a, b] = [recipes[0], recipes.at(-1)];
    if (a === undefined || b === undefined || a === b) continue;
    compared += 1;
    let square = 0;
    let wins = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const [x, y] = drawn(one, a, b);
      square += x / draws;
      if (x < y) wins += 1 / draws;
    }
    // What the drawing itself is off by: 4 standard errors of a share, and 2 % for the mean square.
    const chance = 4 * Math.sqrt(0.25 / draws);
    largest = Math.max(largest, Math.abs(probabilityCloser(one, a, b) - wins));
    expect(Math.abs(probabilityCloser(one, a, b) - wins)).toBeLessThan(0.03 + chance);
    expect(Math.abs(expectedDistance(one, a) ** 2 / square - 1)).toBeLessThan(long ? 0.02 : 0.06);
    expect(expectedDistance(one, a)).toBeCloseTo(a.distance, 10);
    expect(probabilityCloser(one, a, b) + probabilityCloser(one, b, a)).toBeCloseTo(1, 10);
  }
  console.log(`LONG chance | 20 pairs, ${draws} draws | off by ${largest.toFixed(3)} at most`);
});

test("U1, U2: under a power law, and where the strongest rules, about right", { timeout: 300_000 }, () => {
  const draws = process.env["PARTSPROOF_LONG"] === "1" ? 100_000 : 10_000;
  const names = ["a0", "a1", "a2", "a3", "a4", "a5", "a6", "a7"];
  let [offChance, offSquare] = [0, 0];
  for (let n = 0; n < 20; n += 1) {
    const base = randomProblem(seeded(n + 900), { n: 14, bottles: 4, parts: 8 });
    const one: Problem = {
      whiskeys: base.whiskeys.map((whiskey) => ({
        ...whiskey,
        profile: Object.fromEntries(
          names.map((name) => [name, { value: 10 * uniform(), sd: 0.3 + 0.9 * uniform() }]),
        ),
      })),
      target: {
        profile: Object.fromEntries(names.map((name) => [name, 10 * uniform()])),
        exponents: { a0: Infinity, a1: 2, a2: 3, a3: 0.5 },
      },
      rules: [],
      maxBottles: 3,
      maxParts: 6,
    };
    const { recipes } = search(one, 60);
    const [a, b] = [recipes[0], recipes.at(-1)];
    if (a === undefined || b === undefined || a === b) continue;
    let [square, wins] = [0, 0];
    for (let draw = 0; draw < draws; draw += 1) {
      const [x, y] = bentDrawn(one, a, b);
      square += x / draws;
      if (x < y) wins += 1 / draws;
    }
    offChance = Math.max(offChance, Math.abs(probabilityCloser(one, a, b) - wins));
    offSquare = Math.max(offSquare, Math.abs(expectedDistance(one, a) / Math.sqrt(square) - 1));
  }
  console.log(
    `LONG bent chance | 20 pairs, ${draws} draws | chance off by ${offChance.toFixed(3)}, expected distance by ${(100 * offSquare).toFixed(1)} % at most`,
  );
  expect(offChance).toBeLessThan(0.07);
  expect(offSquare).toBeLessThan(0.07);
});

test("U1: never less than the plain distance, and the same when nothing is uncertain", () => {
  for (const recipe of search(problem()).recipes)
    expect(expectedDistance(problem(), recipe)).toBeCloseTo(recipe.distance, 12);
  const vague = problem([], {
    whiskeys: shelf.map((whiskey) => ({
      ...whiskey,
      profile: { ...whiskey.profile, smoke: { value: 2, sd: 1 } },
    })),
  });
  for (const recipe of search(vague).recipes)
    expect(expectedDistance(vague, recipe)).toBeGreaterThan(recipe.distance);
});

test("U2: with nothing uncertain the chance is 0, 0.5 or 1", () => {
  const { recipes } = search(problem());
  expect(probabilityCloser(problem(), recipes[0]!, recipes[5]!)).toBe(1);
  expect(probabilityCloser(problem(), recipes[5]!, recipes[0]!)).toBe(0);
  expect(probabilityCloser(problem(), recipes[0]!, recipes[0]!)).toBe(0.5);
});

test("U3: what cannot be told apart grows with the uncertainty", () => {
  const blurred = (sd: number): Problem =>
    problem([], {
      whiskeys: shelf.map((whiskey) => ({
        ...whiskey,
        profile: Object.fromEntries(
          ["smoke", "honey", "spice", "oak"].map((name) => [
            name,
            { value: intensityOf(whiskey, name).value, sd },
          ]),
        ),
      })),
    });
  const together = [0, 0.5, 2].map((sd) => cannotTellApart(blurred(sd), search(blurred(sd)).recipes).length);
  expect(together[0]).toBe(1);
  expect(together[1]).toBeGreaterThan(1);
  expect(together[2]).toBeGreaterThanOrEqual(together[1]!);
  expect(() =>
    expectedDistance(problem([], { distance: "absolute" }), search(problem()).recipes[0]!),
  ).toThrow(RangeError);
});
