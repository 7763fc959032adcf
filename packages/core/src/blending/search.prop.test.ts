import { expect, test } from "vitest";
import { bestByEnumeration } from "./fixtures/every-recipe.ts";
import { randomProblem } from "./fixtures/random-problem.ts";
import { seeded } from "./fixtures/seeded.ts";
import { search } from "./search.ts";

const PROBLEMS = process.env["PARTSPROOF_LONG"] === "1" ? 5000 : 500;
const TOP = 20;

test(`S1: the whole list is what going through every recipe gives, on ${PROBLEMS} random problems with random rules`, {
  timeout: 3_600_000,
}, () => {
  let rows = 0;
  let empty = 0;
  let full = 0;
  for (let seed = 1; seed <= PROBLEMS; seed += 1) {
    const problem = randomProblem(seeded(seed), { n: 14, bottles: 4, parts: 8 });
    const expected = bestByEnumeration(problem, TOP);
    const found = search(problem, TOP);
    expect(found.provenOptimal).toBe(true);
    expect(
      found.recipes.map(({ parts }) => parts.map(({ id, parts: own }) => `${own} ${id}`).join(" + ")),
      `problem ${seed}`,
    ).toEqual(expected.map(({ parts }) => parts.map(([id, own]) => `${own} ${id}`).join(" + ")));
    for (const [x, { score, distance }] of found.recipes.entries()) {
      expect(Math.abs(score - expected[x]!.score)).toBeLessThan(1e-11);
      expect(Math.abs(distance - expected[x]!.distance)).toBeLessThan(1e-11);
    }
    rows += expected.length;
    if (expected.length === 0) empty += 1;
    if (expected.length === TOP) full += 1;
  }
  console.log(
    `LONG search | ${PROBLEMS} problems | ${rows} recipes the same, ${full} lists full, ${empty} empty`,
  );
  expect(full).toBeGreaterThan(PROBLEMS / 4);
  expect(empty).toBeGreaterThan(PROBLEMS / 50);
});

test("S1: the same on shelves of 24 with up to 16 attributes, where whole groups of whiskeys drop out", {
  timeout: 3_600_000,
}, () => {
  const problems = process.env["PARTSPROOF_LONG"] === "1" ? 60 : 6;
  for (let seed = 1; seed <= problems; seed += 1) {
    const rng = seeded(seed + 9000);
    const base = randomProblem(rng, { n: 24, bottles: 4, parts: 8 });
    const names = Array.from({ length: 6 + 2 * (seed % 6) }, (_, a) => `a${a}`);
    const draw = (): Record<string, number> =>
      Object.fromEntries(names.map((name) => [name, rng.below(101) / 10]));
    const styles = [draw(), draw(), draw(), draw()];
    // Odd ones in styles, even ones spread; the target near the middle.
    const profile = (at: number): Record<string, number> =>
      seed % 2 === 0
        ? draw()
        : Object.fromEntries(
            names.map((name) => [
              name,
              Math.min(10, Math.max(0, styles[at % 4]![name]! + rng.below(31) / 10 - 1.5)),
            ]),
          );
    const whiskeys = Array.from({ length: 24 }, (_, at) => ({
      ...base.whiskeys[at % base.whiskeys.length]!,
      id: `w${at}`,
      profile: profile(at),
    }));
    const target = { profile: Object.fromEntries(names.map((name) => [name, 4 + rng.below(21) / 10])) };
    const problem = {
      ...base,
      whiskeys,
      target,
      maxBottles: 4,
      maxParts: 7,
      rules: base.rules.slice(0, seed % 3),
    };
    const expected = bestByEnumeration(problem, TOP);
    expect(
      search(problem, TOP).recipes.map(({ parts }) => parts.map(({ id, parts: own }) => [id, own])),
      `problem ${seed}`,
    ).toEqual(expected.map(({ parts }) => parts));
  }
});
