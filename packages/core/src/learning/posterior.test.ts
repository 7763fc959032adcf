import { describe, expect, test } from "vitest";
import { chainCase, longChain } from "./fixtures/long-chain.ts";
import { learnTaste } from "./learn-taste.ts";
import { triedBeliefs } from "./tried-beliefs.ts";

// 50 cases under `npm run long`; every time the first few of them. The chain is long enough to be off by 0.02 sd or so itself.
const long = process.env["PARTSPROOF_LONG"] === "1";
const [cases, steps] = long ? [50, 200_000] : [4, 40_000];

/** Parts of shares that are multiples of 1 in so many: the fixture's recipes come from whole parts of 0 to 3. */
const wholeParts = (shares: readonly number[]): number[] => {
  for (let all = 1; all <= 15; all += 1)
    if (shares.every((share) => Math.abs(share * all - Math.round(share * all)) < 1e-9))
      return shares.map((share) => Math.round(share * all));
  throw new Error(`no whole parts: ${shares.join()}`);
};

describe("the posterior against a long Markov chain that shares no code with it", {
  timeout: 1_800_000,
}, () => {
  test.each([
    ["one palate", 0],
    ["three tasters", 0.5],
  ])(`L2 ${cases} cases, %s: means within 0.1 sd, sds within 15 %%`, (who, ownShare) => {
    let [worstMean, worstSd] = [0, 0];
    for (let number = 0; number < cases; number += 1) {
      const made = chainCase(number);
      const tasters = made.rankings.map((_, r) => r % 3);
      // Of one taster nothing is told apart: such cases have a palate in common.
      const apart = ownShare > 0 && made.rankings.length > 1;
      const given = apart ? { ...made, tasters, ownShare } : made;
      const { levels, recipes, rankings, scale, length, curve } = given;
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
          ...(apart ? { tasters: tasters.map(String) } : {}),
        },
        { scale, length, curve },
        ownShare,
      );
      const told = triedBeliefs(taste);
      const exact = longChain(given, steps, number + 1);
      for (const i of recipes.keys()) {
        const at = taste.recipeOf.get(`r${i}`) as number;
        const sd = exact.sd[i] as number;
        const offMean = Math.abs((told.mean[at] as number) - (exact.mean[i] as number)) / sd;
        const offSd = Math.abs((told.sd[at] as number) / sd - 1);
        worstMean = Math.max(worstMean, offMean);
        worstSd = Math.max(worstSd, offSd);
      }
    }
    const result = `means off by ${worstMean.toFixed(3)} sd, sds by ${(100 * worstSd).toFixed(1)} % at most`;
    console.log(
      long
        ? `LONG next, posterior, ${who} | ${cases} cases, ${steps} steps | ${result}`
        : `posterior, ${who}, ${cases} cases: ${result}`,
    );
    expect(worstMean).toBeLessThanOrEqual(0.1);
    expect(worstSd).toBeLessThanOrEqual(0.15);
  });
});
