import { describe, expect, test } from "vitest";
import { type Marking, marksOf, tableOf } from "./fixtures/differing-tasters.ts";
import { repeatableRng } from "../statistics/index.ts";
import { drawMixes } from "./any-mix.ts";
import { type History, learnTaste } from "./learn-taste.ts";

// 300 tables a row under `npm run long`; every time so few that it only shows that all of it runs.
const long = process.env["PARTSPROOF_LONG"] === "1";
const count = long ? 300 : 3;

/** Groups of equal marks, best first. */
function orderOf(marks: readonly { readonly id: string; readonly mark: number }[]): string[][] {
  const groups = Map.groupBy(marks, ({ mark }) => mark);
  return [...groups].toSorted(([a], [b]) => b - a).map(([, group]) => group.map(({ id }) => id));
}

/** Mean of −ln of the chance given to what is true, over pairs of recipes: of marks as they are, and of the orders they make. */
function told(way: Marking, differ: number, as: "marks" | "orders", tables: number): number {
  let [loss, pairs] = [0, 0];
  for (let n = 0; n < tables; n += 1) {
    const { levels, recipes, rankings, common } = tableOf(n, differ);
    const parts = recipes.map((own) => Object.fromEntries(own.map((part, i) => [`w${i}`, part])));
    const sheets = rankings.map(({ taster, order, felt }) => ({
      taster: `t${taster}`,
      marks: marksOf(felt, taster, n, way).map((mark, g) => ({ id: `r${order[g]}`, mark })),
      scale: [0, 100] as const,
    }));
    const history: History = {
      whiskeys: levels.map((own, i) => ({
        id: `w${i}`,
        profile: Object.fromEntries(own.map((value, a) => [`a${a}`, { value, sd: 0.5 }])),
      })),
      tried: parts.map((own, i) => ({ id: `r${i}`, parts: own })),
      ...(as === "marks"
        ? { rankings: [], marks: sheets }
        : {
            rankings: sheets.map(({ marks }) => orderOf(marks)),
            tasters: sheets.map(({ taster }) => taster),
          }),
    };
    const taste = learnTaste(history);
    const draws = drawMixes(
      taste,
      taste.recipes.map(({ placed }) => placed),
      400,
      repeatableRng(n),
    );
    const truth = new Map(parts.map((_, i) => [taste.recipeOf.get(`r${i}`) as number, common[i] ?? 0]));
    for (const [a, one] of truth)
      for (const [b, other] of truth) {
        if (one <= other) continue;
        const better =
          draws.filter((draw) => (draw[a] as number) > (draw[b] as number)).length / draws.length;
        loss -= Math.log(Math.min(0.9975, Math.max(0.0025, better)));
        pairs += 1;
      }
  }
  return loss / pairs;
}

const WAYS = ["straight", "in tens", "compressed", "noisy"] as const;

/** How much more marks lose than their orders. */
function more(way: Marking, differ: number, tables: number): number {
  const [marks, orders] = [told(way, differ, "marks", tables), told(way, differ, "orders", tables)];
  const who = differ === 0 ? "" : " by tasters who differ";
  const result = `log loss of marks ${marks.toFixed(3)}, of their orders ${orders.toFixed(3)}`;
  console.log(
    long ? `LONG next, marks ${way}${who} | ${tables} tables | ${result}` : `marks ${way}${who}: ${result}`,
  );
  return marks - orders;
}

describe("L14 marks against the orders they make, simulated tasters", { timeout: 3_000_000 }, () => {
  // Three tables say too little for what 300 are held to.
  test.each(WAYS)("of one liking, %s", (way) => {
    expect(more(way, 0, count)).toBeLessThan(long ? 0 : 0.2);
  });

  test.each(WAYS)("who differ, %s", (way) => {
    expect(more(way, 1.5, long ? count / 2 : 1)).toBeLessThan(long ? 0.02 : 0.5);
  });
});
