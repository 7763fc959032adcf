import { describe, expect, test } from "vitest";
import { type ChainCase, chainCase, longChain, markedCase } from "./fixtures/long-chain.ts";
import { learnTaste } from "./learn-taste.ts";
import { triedBeliefs } from "./tried-beliefs.ts";

// 50 cases under `npm run long`; every time the first few of them. The chain is long enough to be off by 0.02 sd or so itself.
const long = process.env["PARTSPROOF_LONG"] === "1";
const [cases, usual] = long ? [50, 200_000] : [4, 40_000];
/** Levels and gains are drawn as well: with marks it takes three times as long to be as near. */
const withMarks = 3 * usual;

/** Parts of shares that are multiples of 1 in so many: the fixture's recipes come from whole parts of 0 to 3. */
const wholeParts = (shares: readonly number[]): number[] => {
  for (let all = 1; all <= 15; all += 1)
    if (shares.every((share) => Math.abs(share * all - Math.round(share * all)) < 1e-9))
      return shares.map((share) => Math.round(share * all));
  throw new Error(`no whole parts: ${shares.join()}`);
};

/** What the model and the chain make of a case: the most that means and sds are off. */
function off(given: ChainCase, number: number, steps: number): { mean: number; sd: number } {
  const { levels, recipes, rankings, scale, length, curve, tasters, ownShare, marked = [], noise } = given;
  const named = (taster: number): string | null => (tasters === undefined ? null : String(taster));
  const taste = learnTaste(
    {
      whiskeys: levels.map((own, i) => ({
        id: `w${i}`,
        profile: Object.fromEntries(own.map((value, a) => [`a${a}`, { value, sd: 0 }])),
      })),
      tried: recipes.map((shares, i) => ({
        id: `r${i}`,
        parts: Object.fromEntries(wholeParts(shares).map((part, w) => [`w${w}`, part])),
      })),
      rankings: rankings.map((ranking) => ranking.map((group) => group.map((i) => `r${i}`))),
      tasters: rankings.map((_, r) => named(tasters?.[r] ?? 0)),
      marks: marked.map((sheet) => ({
        taster: named(sheet.taster),
        scale: sheet.scale,
        marks: sheet.glasses.map((i, m) => ({ id: `r${i}`, mark: sheet.marks[m] as number })),
      })),
    },
    {
      shape: { scale, length, curve },
      ...(ownShare === undefined ? {} : { ownShare }),
      ...(noise === undefined ? {} : { noise }),
    },
  );
  const told = triedBeliefs(taste);
  const exact = longChain(given, steps, number + 1);
  let [mean, sd] = [0, 0];
  for (const i of recipes.keys()) {
    const at = taste.recipeOf.get(`r${i}`) as number;
    const one = exact.sd[i] as number;
    mean = Math.max(mean, Math.abs((told.mean[at] as number) - (exact.mean[i] as number)) / one);
    sd = Math.max(sd, Math.abs((told.sd[at] as number) / one - 1));
  }
  return { mean, sd };
}

/** The most that any of the cases is off, told as well. */
function compared(
  what: string,
  caseOf: (number: number) => ChainCase,
  steps: number,
): { mean: number; sd: number } {
  const told = Array.from({ length: cases }, (_, number) => off(caseOf(number), number, steps));
  const [mean, sd] = [Math.max(...told.map((one) => one.mean)), Math.max(...told.map((one) => one.sd))];
  const result = `means off by ${mean.toFixed(3)} sd, sds by ${(100 * sd).toFixed(1)} % at most`;
  console.log(
    long
      ? `LONG next, posterior, ${what} | ${cases} cases, ${steps} steps | ${result}`
      : `posterior, ${what}, ${cases} cases: ${result}`,
  );
  return { mean, sd };
}

describe("the posterior against a long Markov chain that shares no code with it", {
  timeout: 1_800_000,
}, () => {
  test.each([
    ["one palate", 0],
    ["three tasters", 0.5],
  ])(`L2 ${cases} cases, %s: means within 0.1 sd, sds within 15 %%`, (who, ownShare) => {
    const { mean, sd } = compared(
      who,
      (number) => {
        const made = chainCase(number);
        // Of one taster nothing is told apart: such cases have a palate in common.
        const apart = ownShare > 0 && made.rankings.length > 1;
        return apart ? { ...made, tasters: made.rankings.map((_, r) => r % 3), ownShare } : made;
      },
      usual,
    );
    expect(mean).toBeLessThanOrEqual(0.1);
    expect(sd).toBeLessThanOrEqual(0.15);
  });

  test.each([
    ["marks, one palate", 0],
    ["marks, three tasters", 0.5],
  ])(`L13 ${cases} cases, %s: means within 0.1 sd, sds within 15 %%`, (who, ownShare) => {
    const { mean, sd } = compared(
      who,
      (number) => {
        const made = markedCase(number, ownShare > 0 ? 3 : 1);
        const tasters = made.rankings.map((_, r) => r % 3);
        const all = new Set([...tasters, ...(made.marked ?? []).map(({ taster }) => taster)]);
        return ownShare > 0 && all.size > 1 ? { ...made, tasters, ownShare } : made;
      },
      withMarks,
    );
    expect(mean).toBeLessThanOrEqual(0.1);
    expect(sd).toBeLessThanOrEqual(0.15);
  });
});
