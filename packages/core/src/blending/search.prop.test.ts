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
