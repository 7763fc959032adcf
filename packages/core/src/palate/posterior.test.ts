import { expect, test } from "vitest";
import { type ChainCase, longChain } from "./fixtures/long-chain.ts";
import { chances, simulatedTable } from "./fixtures/simulated-tables.ts";
import { EFFECT_VARIANCES, effectMeans, labelNumbers } from "./label-numbers.ts";
import { learnLevels } from "./learn-levels.ts";

// 50 small tables and long chains under `npm run long`; every time one, and a chain that says less.
const long = process.env["PARTSPROOF_LONG"] === "1";
const [count, steps] = long ? [50, 60_000] : [1, 8_000];

const attributes = ["smoke.smoke", "sweet.honey"];

function caseOf(start: number) {
  const { below } = chances(start);
  const tasters = 1 + below(3);
  const table = simulatedTable(start + 900, "usual", {
    whiskeys: 3 + below(3),
    attributes: 2,
    tasters,
    notes: 10 + below(14),
    mixes: 0.4,
    spoken: 0.8,
  });
  const names = new Map(table.attributes.map((name, a) => [name, attributes[a] ?? name]));
  const notes = table.notes.map(({ says, ...note }) => ({
    ...note,
    says: Object.fromEntries(Object.entries(says).map(([name, said]) => [names.get(name) ?? name, said])),
  }));
  const chain: ChainCase = {
    labels: table.whiskeys.map(({ label }) => [...labelNumbers(label)]),
    effectMeans: attributes.map((name) => [...effectMeans(name)]),
    effectVariances: [...EFFECT_VARIANCES],
    tasters: new Set(notes.map(({ taster }) => taster)).size,
    notes: notes.map(({ taster, parts, says }) => {
      const all = Object.values(parts).reduce((sum, part) => sum + part, 0);
      const seats = [...new Set(notes.map((note) => note.taster))].toSorted();
      return {
        taster: seats.indexOf(taster),
        shares: table.whiskeys.map(({ id }) => (parts[id] ?? 0) / all),
        says: attributes.map((name) => says[name] ?? null),
      };
    }),
  };
  return { table, notes, chain };
}

test("P9 means within 0.1 sd (root mean square) of a long Markov chain's, 0.35 at most, sds within 20 %", {
  timeout: 3_600_000,
}, () => {
  let [furthest, widest, squares, levels] = [0, 0, 0, 0];
  for (let start = 0; start < count; start += 1) {
    const { table, notes, chain } = caseOf(start);
    const { whiskeys, attributes: learned } = learnLevels(table.whiskeys, notes);
    const exact = longChain(chain, steps, start);
    for (const { id, means, covariance } of learned)
      for (const [i, whiskey] of whiskeys.entries()) {
        const a = attributes.indexOf(id);
        const w = table.whiskeys.findIndex((one) => one.id === whiskey);
        const sd = exact.sds[a]?.[w] ?? Number.NaN;
        const off = Math.abs((means[i] ?? 0) - (exact.means[a]?.[w] ?? 0)) / sd;
        const wide = Math.abs(Math.sqrt(covariance[i * means.length + i] ?? 0) / sd - 1);
        furthest = Math.max(furthest, off);
        widest = Math.max(widest, wide);
        squares += off * off;
        levels += 1;
      }
  }
  const result = `means off by ${Math.sqrt(squares / levels).toFixed(3)} sd (root mean square), ${furthest.toFixed(2)} at most; sds by ${(100 * widest).toFixed(1)} % at most`;
  console.log(long ? `LONG palate, posterior | ${count} tables, chains of ${steps} | ${result}` : result);
  expect(Math.sqrt(squares / levels)).toBeLessThan(0.1);
  expect(furthest).toBeLessThan(0.35);
  expect(widest).toBeLessThan(0.2);
});
