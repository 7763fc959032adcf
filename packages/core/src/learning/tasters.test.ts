import { describe, expect, test } from "vitest";
import { tableOf } from "./fixtures/differing-tasters.ts";
import type { History } from "./learn-taste.ts";
import { nextFlight } from "./next-flight.ts";
import { learnTaste } from "./learn-taste.ts";
import { whatIf } from "./what-if.ts";

// 80 tables a row under `npm run long`; every time so few that it only shows that all of it runs.
const long = process.env["PARTSPROOF_LONG"] === "1";
const count = long ? 80 : 2;

interface Told {
  /** Mean of −ln of the chance given to what is true. */
  readonly loss: number;
  /** Expected calibration error over ten classes. */
  readonly error: number;
  readonly apart: number;
}

/** Chances of one recipe being liked better by all than another, with tasters named or not. */
function told(differ: number, named: boolean): Told {
  const said: { chance: number; right: boolean }[] = [];
  let apart = 0;
  for (let n = 0; n < count; n += 1) {
    const { levels, recipes, rankings, common } = tableOf(n, differ);
    const parts = recipes.map((own) => Object.fromEntries(own.map((part, i) => [`w${i}`, part])));
    const history: History = {
      whiskeys: levels.map((own, i) => ({
        id: `w${i}`,
        profile: Object.fromEntries(own.map((value, a) => [`a${a}`, { value, sd: 0.5 }])),
      })),
      tried: parts.map((own, i) => ({ id: `r${i}`, parts: own })),
      rankings: rankings.map(({ order }) => order.map((number) => [`r${number}`])),
      ...(named ? { tasters: rankings.map(({ taster }) => `t${taster}`) } : {}),
    };
    const { ownShare } = nextFlight(history, { glasses: 4, maxParts: 4, start: 1 });
    apart += ownShare > 0 ? 1 : 0;
    const taste = learnTaste(history);
    for (const [a, against] of parts.entries())
      for (const [i, { better }] of whatIf(taste, parts.slice(a + 1), against).entries()) {
        const lead = (common[a + 1 + i] ?? 0) - (common[a] ?? 0);
        if (lead !== 0) said.push({ chance: better, right: lead > 0 });
      }
  }
  const classes = Map.groupBy(said, ({ chance }) => Math.min(9, Math.floor(10 * chance)));
  const error = [...classes.values()].reduce((sum, some) => {
    const mean = some.reduce((all, { chance }) => all + chance, 0) / some.length;
    const right = some.filter((one) => one.right).length / some.length;
    return sum + (some.length / said.length) * Math.abs(mean - right);
  }, 0);
  const loss =
    said.reduce((sum, { chance, right }) => {
      const sure = Math.min(0.9975, Math.max(0.0025, right ? chance : 1 - chance));
      return sum - Math.log(sure);
    }, 0) / said.length;
  return { loss, error, apart };
}

describe("L12 what all like, learned from simulated tasters", { timeout: 3_000_000 }, () => {
  test.each([
    ["of one palate", 0],
    ["who differ", 2],
    ["who differ much", 3.5],
  ])("tasters %s", (who, differ) => {
    const [plain, named] = [told(differ, false), told(differ, true)];
    for (const [how, one] of [
      ["taken for one palate", plain],
      ["told apart", named],
    ] as const)
      console.log(
        `${long ? "LONG next, " : ""}tasters ${who}, ${how} | ${count} tables | log loss ${one.loss.toFixed(3)}, calibration error ${one.error.toFixed(3)}, told apart in ${one.apart}`,
      );
    expect(plain.apart).toBe(0);
    // Told apart costs next to nothing where there is nothing to tell.
    expect(named.loss).toBeLessThan(plain.loss + (long ? 0.01 : 0.1));
  });
});
