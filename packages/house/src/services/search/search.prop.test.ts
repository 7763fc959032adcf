import { search as coreSearch } from "@partsproof/core/blending";
import fc from "fast-check";
import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient } from "../../protocol/index.ts";
import { coreProblem } from "./core-problem.ts";
import { bestByCounting } from "./fixtures/every-recipe.ts";
import { smallProblem } from "./fixtures/problems.ts";

const RUNS = process.env["PARTSPROOF_LONG"] === "1" ? 2000 : 150;
const client = createClient(openReckoner(), "http://reckoner.test");

const keyOf = (parts: readonly { readonly id: string; readonly parts: number }[]): string =>
  String(parts.map(({ id, parts: own }) => [id, own]));

test("SF1 a list is what counting through every recipe by the words of the file's format gives", async () => {
  let rows = 0;
  let none = 0;
  await fc.assert(
    fc.asyncProperty(smallProblem, async (problem) => {
      const expected = bestByCounting(problem, problem.top ?? 20);
      const { recipes, provenOptimal, gap, conflict } = await client("search", { body: problem });
      expect({ provenOptimal, gap }).toEqual({ provenOptimal: true, gap: 0 });
      expect(recipes).toHaveLength(expected.length);
      // Row by row as close; which of those equally close stands first is core's affair, so each is looked up by its parts.
      const every = new Map(bestByCounting(problem, Infinity).map((row) => [String(row.parts), row]));
      expect(new Set(recipes.map(({ parts }) => keyOf(parts))).size).toBe(recipes.length);
      for (const [n, { parts, distance, abv, pricePerLitre }] of recipes.entries()) {
        expect(Math.abs(distance - expected[n]!.distance)).toBeLessThan(1e-9);
        const row = every.get(keyOf(parts))!;
        expect(Math.abs(distance - row.distance)).toBeLessThan(1e-9);
        expect(Math.abs(abv - row.abv)).toBeLessThan(1e-9);
        if (row.pricePerLitre === null) expect(pricePerLitre).toBeNull();
        else expect(Math.abs((pricePerLitre ?? Number.NaN) - row.pricePerLitre)).toBeLessThan(1e-9);
      }
      expect(conflict === undefined).toBe(expected.length > 0);
      for (const name of conflict ?? []) expect(Object.keys(problem.rules)).toContain(name);
      rows += expected.length;
      if (expected.length === 0) none += 1;
    }),
    { numRuns: RUNS, seed: 4 },
  );
  expect(rows).toBeGreaterThan(5 * RUNS);
  expect(none).toBeGreaterThan(RUNS / 20);
});

test("SF2 the API says what core says", async () => {
  await fc.assert(
    fc.asyncProperty(smallProblem, async (problem) => {
      const core = coreSearch(coreProblem(problem), problem.top ?? 20);
      const api = await client("search", { body: problem });
      expect(api.recipes.map(({ parts, distance, abv }) => ({ parts, distance, abv }))).toEqual(
        core.recipes.map(({ parts, distance, abv20 }) => ({ parts, distance, abv: abv20 })),
      );
      expect({ proven: api.provenOptimal, nodes: api.nodes, unknown: api.unknown }).toEqual({
        proven: core.provenOptimal,
        nodes: core.nodes,
        unknown: core.unknown,
      });
    }),
    { numRuns: RUNS / 3, seed: 5 },
  );
});
