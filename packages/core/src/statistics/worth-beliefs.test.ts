import { expect, test } from "vitest";
import { integrate } from "../numeric/index.ts";
import {
  evenDraw,
  fillNormal,
  judgedBeliefs,
  normalCumulative,
  pairSets,
  rankedSet,
  type Ranking,
  repeatableRng,
  type Rng,
  worthBeliefs,
} from "./index.ts";

const long = process.env["PARTSPROOF_LONG"] === "1";

test("B1 two items: the posterior is the one-dimensional integral, within the stated drawing error", () => {
  // The difference of two log worths with prior sd 1 each is normal with variance 2.
  for (const [wins, losses] of [
    [1, 0],
    [3, 1],
    [8, 2],
    [6, 0],
  ] as const) {
    const weight = (d: number): number =>
      Math.exp((-d * d) / 4) * (1 + Math.exp(-d)) ** -wins * (1 + Math.exp(d)) ** -losses;
    const all = integrate(weight, -12, 12, 24);
    const exact = integrate(weight, 0, 12, 12) / all;
    const mean = integrate((d) => d * weight(d), -12, 12, 24) / all / 2;
    const beliefs = worthBeliefs(
      pairSets({
        wins: [
          [0, wins],
          [losses, 0],
        ],
      }),
      2,
      { rng: repeatableRng(7) },
    );
    expect(Math.abs((beliefs.better[0]?.[1] ?? 0) - exact)).toBeLessThan(4 * beliefs.monteCarloError);
    expect(Math.abs((beliefs.mean[0] ?? 0) - mean)).toBeLessThan(
      (4 * (beliefs.sd[0] ?? 0)) / Math.sqrt(beliefs.effective),
    );
  }
});

test("B1 with ties and with a place effect, against a grid in two dimensions", () => {
  // 3 wins, 1 loss, 2 ties; ν = e^t, t normal (−1, 1.5).
  const weight = (d: number, t: number): number => {
    const z = Math.exp(d / 2) + Math.exp(-d / 2) + Math.exp(t);
    return (
      (Math.exp((-d * d) / 4 - (t + 1) ** 2 / 4.5) *
        Math.exp(d / 2) ** 3 *
        Math.exp(-d / 2) *
        Math.exp(t) ** 2) /
      z ** 6
    );
  };
  const over = (low: number): number =>
    integrate((t) => integrate((d) => weight(d, t), low, 12, 12), -9, 7, 10);
  const exact = over(0) / over(-12);
  const beliefs = worthBeliefs(
    pairSets({
      wins: [
        [0, 3],
        [1, 0],
      ],
      ties: [
        [0, 2],
        [2, 0],
      ],
    }),
    2,
    { rng: repeatableRng(8) },
  );
  expect(Math.abs((beliefs.better[0]?.[1] ?? 0) - exact)).toBeLessThan(4 * beliefs.monteCarloError);
});

test("B2 separated, disconnected and missing data give finite, sensible answers", () => {
  const winner: Ranking[] = Array.from({ length: 6 }, () => [[0], [1], [2]]);
  const always = worthBeliefs(
    winner.map((ranking) => rankedSet(ranking, 3)),
    3,
    { rng: repeatableRng(9) },
  );
  expect(always.better[0]?.[1]).toBeGreaterThan(0.9);
  expect(always.better[0]?.[1]).toBeLessThan(1);
  expect(always.mean.every(Number.isFinite)).toBe(true);
  // Two groups that never met: between them all stays as the prior has it, one to one by symmetry.
  const apart = worthBeliefs([rankedSet([[0], [1]], 4), rankedSet([[2], [3]], 4)], 4, {
    rng: repeatableRng(10),
  });
  expect(Math.abs((apart.better[0]?.[2] ?? 0) - 0.5)).toBeLessThan(4 * apart.monteCarloError);
  expect(apart.better[0]?.[3]).toBeGreaterThan(0.6);
  // Nothing ranked at all: every order is as likely.
  const nothing = worthBeliefs([], 3, { rng: repeatableRng(11) });
  for (const row of nothing.ranks) for (const p of row) expect(Math.abs(p - 1 / 3)).toBeLessThan(0.03);
});

test("B3 probabilities hang together, and the same start gives the same answer", () => {
  const sets = [rankedSet([[0], [1, 2], [3]], 4), rankedSet([[2], [0], [1]], 4)];
  const one = worthBeliefs(sets, 4, { rng: repeatableRng(12) });
  expect(worthBeliefs(sets, 4, { rng: repeatableRng(12) })).toEqual(one);
  one.ranks.forEach((row) => expect(row.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 10));
  one.ranks[0]?.forEach((_, r) =>
    expect(one.ranks.reduce((sum, row) => sum + (row[r] ?? 0), 0)).toBeCloseTo(1, 10),
  );
  expect(one.mean.reduce((sum, x) => sum + x, 0)).toBeCloseTo(0, 10);
  one.better.forEach((row, i) => {
    const expected = 1 + one.better.reduce((sum, other, j) => (i === j ? sum : sum + (other[i] ?? 0)), 0);
    expect(one.expectedRank[i]).toBeCloseTo(expected, 10);
    for (let j = 0; j < i; j += 1) expect((row[j] ?? 0) + (one.better[j]?.[i] ?? 0)).toBeCloseTo(1, 12);
  });
  expect(one.effective).toBeGreaterThan(4000);
  expect(() => worthBeliefs(sets, 1, { rng: repeatableRng(1) })).toThrow("requires 2 items or more, got 1");
});

test("B4 a judge's own rankings hang together: six sheets of one say less about the others than six of six", () => {
  const ranking: Ranking = [[0], [1], [2]];
  const six = Array.from({ length: 6 }, (_, judge) => ({ judge, ranking }));
  const one = six.map(() => ({ judge: 0, ranking }));
  const [bySix, byOne] = [six, one].map((rankings) => judgedBeliefs(rankings, 3, { rng: repeatableRng(13) }));
  expect(bySix?.common.better[0]?.[2]).toBeGreaterThan(0.95);
  expect(byOne?.common.better[0]?.[2]).toBeLessThan(bySix?.common.better[0]?.[2] ?? 0);
  expect(byOne?.spread.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
  // Judges who contradict each other, each consistently, are found to differ.
  const split = [0, 1, 2, 3].flatMap((judge) =>
    Array.from({ length: 4 }, () => ({ judge, ranking: judge < 2 ? ranking : ([[2], [1], [0]] as Ranking) })),
  );
  const differing = judgedBeliefs(split, 3, { rng: repeatableRng(14) });
  expect(differing.spread[0]?.probability).toBeLessThan(0.01);
  expect(differing.judges[0]?.[0]).toBeGreaterThan(0.5);
  expect(differing.judges[3]?.[0]).toBeLessThan(-0.5);
  expect(Math.abs((differing.common.better[0]?.[2] ?? 0) - 0.5)).toBeLessThan(0.05);
  expect(() => judgedBeliefs([], 3, { rng: repeatableRng(1) })).toThrow("at least 1 ranking, got 0");
});

/** One ranking by Plackett and Luce's model, by Gumbel noise. */
const drawn = (worth: readonly number[], rng: Rng): Ranking =>
  worth
    .map((w, item) => ({ item, score: w - Math.log(-Math.log(evenDraw(rng))) }))
    .toSorted((a, b) => b.score - a.score)
    .map(({ item }) => [item]);

const sizes = [
  [3, 3],
  [6, 3],
  [3, 6],
  [6, 5],
  [12, 4],
] as const;

test("B5 calibration: 95 % intervals cover 93 to 97 % averaged over the prior, and P(better) means what it says", () => {
  const rng = repeatableRng(15);
  const runs = long ? 1500 : 60;
  let [inside, intervals] = [0, 0];
  const claims = Array.from({ length: 5 }, () => ({ said: 0, true: 0, times: 0 }));
  for (const [sheets, items] of sizes) {
    for (let run = 0; run < runs; run += 1) {
      const worth = new Float64Array(items);
      fillNormal(worth, rng);
      const sets = Array.from({ length: sheets }, () => rankedSet(drawn([...worth], rng), items));
      const beliefs = worthBeliefs(sets, items, { rng, draws: long ? 2000 : 1000 });
      const middle = worth.reduce((sum, w) => sum + w, 0) / items;
      beliefs.interval.forEach(({ low, high }, i) => {
        const truth = (worth[i] ?? 0) - middle;
        intervals += 1;
        if (low <= truth && truth <= high) inside += 1;
      });
      const p = beliefs.better[0]?.[1] ?? 0;
      const claim = claims[Math.min(4, Math.floor(p * 5))];
      if (claim !== undefined) {
        claim.said += p;
        claim.true += Number((worth[0] ?? 0) > (worth[1] ?? 0));
        claim.times += 1;
      }
    }
  }
  const share = inside / intervals;
  console.log(
    `LONG worths, calibration | ${sizes.length} sizes, ${runs} tables each, ${intervals} intervals | 95 % intervals cover ${(100 * share).toFixed(1)} %; said and true: ${claims.map(({ said, true: is, times }) => `${(said / times).toFixed(2)} ${(is / times).toFixed(2)}`).join(", ")}`,
  );
  expect(share).toBeGreaterThan(long ? 0.93 : 0.92);
  expect(share).toBeLessThan(long ? 0.97 : 0.98);
  for (const { said, true: is, times } of claims) {
    expect(Math.abs(said - is) / Math.sqrt((said * (1 - said / times)) / 1 + 1)).toBeLessThan(4);
  }
}, 600_000);

test("B6 at fixed truths: no difference is hardly ever taken for one, and a large one is found", () => {
  const rng = repeatableRng(16);
  const runs = long ? 1000 : 60;
  const rows: string[] = [];
  const shares = new Map<string, { sure: number; wrong: number }>();
  for (const [name, worth] of [
    ["none", [0, 0, 0, 0]],
    ["one ahead by 1", [1, 0, 0, 0]],
    ["one ahead by 3", [3, 0, 0, 0]],
    ["steps of 1", [3, 2, 1, 0]],
  ] as const) {
    let [covered, sure, wrong] = [0, 0, 0];
    for (let run = 0; run < runs; run += 1) {
      const sets = Array.from({ length: 6 }, () => rankedSet(drawn(worth, rng), 4));
      const beliefs = worthBeliefs(sets, 4, { rng, draws: 1000 });
      const middle = worth.reduce((sum: number, w) => sum + w, 0) / 4;
      const { low, high } = beliefs.interval[0] ?? { low: 0, high: 0 };
      if (low <= worth[0] - middle && worth[0] - middle <= high) covered += 1;
      const p = beliefs.better[0]?.[1] ?? 0;
      if (p > 0.975) sure += 1;
      if (p < 0.025) wrong += 1;
    }
    rows.push(
      `${name}: covers ${((100 * covered) / runs).toFixed(0)} %, surely ahead ${((100 * sure) / runs).toFixed(0)} %, surely behind ${((100 * wrong) / runs).toFixed(0)} %`,
    );
    shares.set(name, { sure: sure / runs, wrong: wrong / runs });
  }
  console.log(`LONG worths at fixed truths | 6 sheets of 4, ${runs} tables each | ${rows.join("; ")}`);
  const none = shares.get("none");
  expect((none?.sure ?? 1) + (none?.wrong ?? 1)).toBeLessThan(long ? 0.08 : 0.12);
  expect(shares.get("one ahead by 3")?.sure).toBeGreaterThan(0.5);
}, 600_000);

test("B7 draws: normal ones are normal, the generator repeats itself and refuses a bad start", () => {
  const rng = repeatableRng(17);
  const draws = new Float64Array(20_001);
  fillNormal(draws, rng);
  for (const at of [-1.5, -0.3, 0.6, 2]) {
    const share = draws.filter((x) => x <= at).length / draws.length;
    expect(Math.abs(share - normalCumulative(at))).toBeLessThan((4 * 0.5) / Math.sqrt(draws.length));
  }
  const [a, b] = [repeatableRng(3), repeatableRng(3)];
  expect(Array.from({ length: 9 }, () => a.below(1000))).toEqual(
    Array.from({ length: 9 }, () => b.below(1000)),
  );
  expect(() => repeatableRng(-1)).toThrow("repeatableRng requires a whole start from 0");
});
