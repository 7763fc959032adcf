import { expect, test } from "vitest";
import {
  bradleyTerry,
  bradleyTerryServed,
  type MostLikelyWorths,
  type NoMaximum,
  plackettLuce,
  plackettLuceServed,
  rankedSet,
  type Ranking,
  rankingLogLikelihood,
  shuffled,
} from "./index.ts";
import { seeded } from "./fixtures/seeded.ts";
import oracle from "./rankings.oracle.json" with { type: "json" };
import published from "./rankings.published.json" with { type: "json" };

function found(result: MostLikelyWorths | NoMaximum): MostLikelyWorths {
  if (!result.ok) throw new Error(result.code);
  return result;
}
const farthest = (got: readonly number[], expected: readonly number[]): number =>
  Math.max(...got.map((x, i) => Math.abs(x - (expected[i] ?? Number.NaN))));

const salads = published.salad.orderings.map((order) =>
  Array.from(order, (letter) => ["ABCD".indexOf(letter)]),
);

test("P1 Plackett-Luce: 32 rankings of salad dressings (Critchlow and Fligner 1991), fit by scipy", () => {
  const fit = found(plackettLuce(salads, 4));
  const off = [
    farthest(fit.logWorth, published.salad.logWorth),
    farthest(fit.standardError, published.salad.standardError),
    Math.abs(fit.logLikelihood - published.salad.logLikelihood),
  ];
  console.log(
    `Plackett-Luce, salad dressings: worths, errors, likelihood off by ${off.map((x) => x.toExponential(1)).join(", ")}`,
  );
  expect(Math.max(...off)).toBeLessThan(1e-6);
});

test("P1 Bradley-Terry: citations of four journals (Stigler 1994), fit by R 4.2.2", () => {
  // wins[i][j] is here the times i cited j: a citation is a win of the one cited.
  const wins = published.citations.wins.map((row, i) =>
    row.map((_, j) => published.citations.wins[j]?.[i] ?? 0),
  );
  const asPrinted = found(bradleyTerry({ wins: published.citations.wins }));
  const fit = found(bradleyTerry({ wins }));
  const [off, errors] = [
    farthest(asPrinted.logWorth, published.citations.logWorth),
    farthest(asPrinted.standardError, published.citations.standardError),
  ];
  console.log(
    `Bradley-Terry, citations: worths, errors off by ${off.toExponential(1)}, ${errors.toExponential(1)}`,
  );
  expect(Math.max(off, errors)).toBeLessThan(1e-6);
  // Wins turned round turn the signs.
  expect(
    farthest(
      fit.logWorth,
      asPrinted.logWorth.map((x) => -x),
    ),
  ).toBeLessThan(1e-9);
});

test("P1 ties of any size and parts of the items: every subset gone through by scipy", () => {
  let off = 0;
  for (const { items, rankings, logWorth, standardError, ties, logLikelihood } of oracle.rankings) {
    const fit = found(plackettLuce(rankings, items));
    expect(fit.ties.map(({ size }) => size)).toEqual(ties.map(([size]) => size));
    off = Math.max(
      off,
      farthest(fit.logWorth, logWorth),
      Math.abs(fit.logLikelihood - logLikelihood),
      ...fit.ties.map(({ delta }, i) => Math.abs(Math.log(delta / (ties[i]?.[1] ?? 1)))),
    );
    expect(farthest(fit.standardError, standardError)).toBeLessThan(1e-3);
  }
  console.log(`Davidson-Luce against scipy: off by ${off.toExponential(1)} at most`);
  expect(oracle.rankings.length).toBeGreaterThanOrEqual(4);
  expect(off).toBeLessThan(1e-6);
});

test("P1 pairs with ties and the effect of coming first (Davidson and Beaver 1977), fit by scipy", () => {
  const { served, logWorth, first, firstError, nu, logLikelihood } = oracle.pairs;
  const fit = found(
    bradleyTerryServed(
      served.map(([one = 0, two = 0, firstWon = 0, secondWon = 0, tied = 0]) => ({
        first: one,
        second: two,
        firstWon,
        secondWon,
        tied,
      })),
      4,
    ),
  );
  const off = Math.max(
    farthest(fit.logWorth, logWorth),
    Math.abs((fit.extra[0]?.value ?? 0) - first),
    Math.abs((fit.ties[0]?.delta ?? 0) - nu),
    Math.abs(fit.logLikelihood - logLikelihood),
  );
  console.log(`pairs with ties and order against scipy: off by ${off.toExponential(1)}`);
  expect(off).toBeLessThan(1e-6);
  expect(fit.extra[0]?.standardError).toBeCloseTo(firstError, 3);
});

test("P1 two items in closed form: log odds of the wins, ν from the ties", () => {
  const fit = found(
    bradleyTerry({
      wins: [
        [0, 6],
        [2, 0],
      ],
      ties: [
        [0, 4],
        [4, 0],
      ],
    }),
  );
  // Saturated: P = 6/12, 2/12, 4/12; ν = 4/√(6·2).
  expect(fit.logWorth[1]).toBeCloseTo(Math.log(2 / 6), 12);
  expect(fit.ties[0]?.delta).toBeCloseTo(4 / Math.sqrt(12), 12);
});

test("P2 no maximum: it says who was never behind whom, or never met, or that the ties run away", () => {
  expect(
    plackettLuce(
      [
        [[0], [1], [2]],
        [[0], [2], [1]],
      ],
      3,
    ),
  ).toMatchObject({ ok: false, code: "always_ahead", ahead: [0], behind: [1, 2] });
  expect(
    plackettLuce(
      [
        [[1], [2], [0]],
        [[2], [1], [0]],
      ],
      3,
    ),
  ).toMatchObject({ code: "always_ahead", ahead: [1, 2], behind: [0] });
  expect(
    plackettLuce(
      [
        [[0], [1]],
        [[1], [0]],
        [[2], [3]],
        [[3], [2]],
      ],
      4,
    ),
  ).toMatchObject({ code: "never_compared", ahead: [0, 1], behind: [2, 3] });
  // One win and one tie: the worths and ν grow together for ever.
  expect(
    bradleyTerry({
      wins: [
        [0, 1],
        [0, 0],
      ],
      ties: [
        [0, 1],
        [1, 0],
      ],
    }),
  ).toMatchObject({ ok: false, code: "runs_away" });
  // Served in the same order every time, first and last can't be told from the worths.
  const same = [0, 1, 2].map((turn) => ({
    ranking: [[turn], [(turn + 1) % 3], [(turn + 2) % 3]],
    served: [0, 1, 2],
  }));
  expect(plackettLuceServed(same, 3)).toMatchObject({ ok: false, code: "runs_away" });
});

test("P3 the effect of the first and the last glass is found and taken out", () => {
  const rng = seeded(63);
  const truth = [0, 0.8, -0.5, 0.3];
  const [first, last] = [1, -0.7];
  const rankings = Array.from({ length: 1500 }, () => {
    const served = shuffled([0, 1, 2, 3], rng);
    const left = served.map((item, at) => ({
      item,
      // Gumbel noise on the appeal gives Plackett and Luce's model.
      score:
        (truth[item] ?? 0) +
        (at === 0 ? first : 0) +
        (at === 3 ? last : 0) -
        Math.log(-Math.log((rng.below(1e9) + 0.5) / 1e9)),
    }));
    return { ranking: left.toSorted((a, b) => b.score - a.score).map(({ item }) => [item]), served };
  });
  const fit = found(plackettLuceServed(rankings, 4));
  const [a, b] = fit.extra;
  expect(Math.abs((a?.value ?? 0) - first)).toBeLessThan(3 * (a?.standardError ?? 0));
  expect(Math.abs((b?.value ?? 0) - last)).toBeLessThan(3 * (b?.standardError ?? 0));
  fit.logWorth.forEach((x, i) =>
    expect(Math.abs(x - (truth[i] ?? 0))).toBeLessThan(3 * (fit.standardError[i] ?? 0) + 1e-12),
  );
});

/** Hunter's minorise-maximise iteration for Plackett and Luce (Ann. Stat. 32 (2004) 384): another road to the same top. */
function byMinorising(rankings: readonly Ranking[], items: number, rounds: number): number[] {
  let worth = Array.from({ length: items }, () => 1);
  for (let round = 0; round < rounds; round += 1) {
    const wins = worth.map(() => 0);
    const weight = worth.map(() => 0);
    for (const ranking of rankings) {
      const order = ranking.flat();
      for (let from = 0; from < order.length - 1; from += 1) {
        const left = order.slice(from);
        const sum = left.reduce((total, item) => total + (worth[item] ?? 0), 0);
        wins[order[from] ?? 0] = (wins[order[from] ?? 0] ?? 0) + 1;
        for (const item of left) weight[item] = (weight[item] ?? 0) + 1 / sum;
      }
    }
    worth = worth.map((_, i) => (wins[i] ?? 0) / (weight[i] ?? 1));
  }
  return worth.map((w) => Math.log(w / (worth[0] ?? 1)));
}

test("P1 Newton's method and Hunter's minorising reach the same worths", () => {
  const fit = found(plackettLuce(salads, 4));
  expect(farthest(fit.logWorth, byMinorising(salads, 4, 400))).toBeLessThan(1e-9);
});

test("P4 87 items in 36 full rankings: the gradient 0, beside plain gradient ascent", () => {
  const rng = seeded(64);
  const items = 87;
  const truth = Array.from({ length: items }, (_, i) => (i % 8) / 2.5);
  const rankings = Array.from({ length: 36 }, () =>
    truth
      .map((worth, item) => ({ item, score: worth - Math.log(-Math.log((rng.below(1e9) + 0.5) / 1e9)) }))
      .toSorted((a, b) => b.score - a.score)
      .map(({ item }) => [item]),
  );
  const fit = found(plackettLuce(rankings, items));
  const slope = (x: readonly number[]): { value: number; gradient: number[] } => {
    const gradient = x.map(() => 0);
    let value = 0;
    for (const ranking of rankings) {
      let left = 0;
      const sums = ranking.map(() => 0);
      for (let at = items - 1; at >= 0; at -= 1) sums[at] = left += Math.exp(x[ranking[at]?.[0] ?? 0] ?? 0);
      let once = 0;
      ranking.forEach(([item = 0], at) => {
        once += 1 / (sums[at] ?? 1);
        value += (x[item] ?? 0) - Math.log(sums[at] ?? 1);
        gradient[item] = (gradient[item] ?? 0) + 1 - Math.exp(x[item] ?? 0) * once;
      });
    }
    return { value, gradient };
  };
  expect(Math.max(...slope(fit.logWorth).gradient.map(Math.abs))).toBeLessThan(1e-8);
  let x = Array.from({ length: items }, () => 0);
  let here = slope(x);
  let rounds = 0;
  for (; rounds < 3000 && fit.logLikelihood - here.value > 1e-8; rounds += 1) {
    x = x.map((v, i) => v + 0.04 * (here.gradient[i] ?? 0));
    here = slope(x);
  }
  console.log(
    `LONG Plackett-Luce | 87 items, 36 full rankings | ${fit.steps} steps; plain gradient ascent ${rounds} steps, ${(fit.logLikelihood - here.value).toExponential(1)} short`,
  );
  expect(here.value).toBeLessThanOrEqual(fit.logLikelihood + 1e-7);
}, 60_000);

test("P5 rankings that are not: an item twice, one too high, an empty place", () => {
  expect(() => plackettLuce([[[0], [0]]], 2)).toThrow("a ranking requires every item once, got [0, 0]");
  expect(() => plackettLuce([[[0], [2]]], 2)).toThrow("a ranking requires items from 0 to 1, got 2");
  expect(() => plackettLuce([[[0], []]], 2)).toThrow("at least 1 item in every place");
  expect(() => rankingLogLikelihood([rankedSet([[0, 1]], 2)], 2, [])).toThrow(
    "requires the sizes of all ties, got [] without 2",
  );
  expect(() => plackettLuce([], 1)).toThrow("requires 2 items or more, got 1");
  expect(() =>
    bradleyTerry({
      wins: [
        [0, -1],
        [0, 0],
      ],
    }),
  ).toThrow("wins requires 2 counts >= 0 in row 0, got -1 at 1");
  expect(() =>
    bradleyTerry({
      wins: [
        [0, 1],
        [0, 0],
      ],
      ties: [
        [0, 1],
        [2, 0],
      ],
    }),
  ).toThrow("a symmetric table, got 1 at 0, 1 and 2 back");
  expect(() => plackettLuceServed([{ ranking: [[0], [1]], served: [0, 0] }], 2)).toThrow(
    "a served ranking requires",
  );
});
