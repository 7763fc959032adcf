import { expect, test } from "vitest";
import {
  evenDraw,
  fillNormal,
  type Interval,
  JUDGE_SPREADS,
  judgedBeliefs,
  type JudgedRanking,
  PLACE_EFFECTS,
  rankedSet,
  type Ranking,
  repeatableRng,
  type Rng,
  servedSet,
  shuffled,
  WORTH_PRIOR,
  worthBeliefs,
} from "./index.ts";

const long = process.env["PARTSPROOF_LONG"] === "1";

const normal = (size: number, sd: number, rng: Rng): number[] => {
  const draws = new Float64Array(size);
  fillNormal(draws, rng);
  return [...draws].map((x) => x * sd);
};

/** A ranking by Davidson and Luce's model with ties of two: at every stage one or two of those left are picked. */
function drawn(worth: ReadonlyMap<number, number>, delta: number, rng: Rng): number[][] {
  const left = new Map(worth);
  const groups: number[][] = [];
  while (left.size > 0) {
    const items = [...left.keys()];
    const picks = items.map((item) => ({ group: [item], weight: Math.exp(left.get(item) ?? 0) }));
    items.forEach((a, i) => {
      for (const b of items.slice(i + 1)) {
        picks.push({
          group: [a, b],
          weight: delta * Math.exp(((left.get(a) ?? 0) + (left.get(b) ?? 0)) / 2),
        });
      }
    });
    let at = evenDraw(rng) * picks.reduce((sum, { weight }) => sum + weight, 0);
    const pick = picks.find(({ weight }) => (at -= weight) <= 0)?.group ?? items.slice(0, 1);
    groups.push(pick);
    for (const item of pick) left.delete(item);
  }
  return groups;
}

const covers = ({ low, high }: Interval, x: number): number => Number(low <= x && x <= high);
const centred = (worth: readonly number[]): number[] => {
  const middle = worth.reduce((sum, w) => sum + w, 0) / worth.length;
  return worth.map((w) => w - middle);
};

test("B5 calibration with ties and with what the first and last place do", () => {
  const rng = repeatableRng(20);
  const runs = long ? 1500 : 60;
  const hits = { worths: 0, of: 0, places: 0, ofPlaces: 0 };
  for (let run = 0; run < runs; run += 1) {
    const [sheets, items] = run % 2 === 0 ? [4, 4] : [10, 5];
    const worth = normal(items, WORTH_PRIOR.worthSd, rng);
    const [first = 0, last = 0] = normal(PLACE_EFFECTS, WORTH_PRIOR.extraSd, rng);
    const [turn = 0] = normal(2, WORTH_PRIOR.tieSd, rng);
    const delta = Math.exp(WORTH_PRIOR.tieMean + turn);
    const sets = Array.from({ length: sheets }, () => {
      const served = shuffled(
        worth.map((_, i) => i),
        rng,
      );
      const appeal = served.map(
        (item, at) =>
          [item, (worth[item] ?? 0) + (at === 0 ? first : 0) + (at === items - 1 ? last : 0)] as const,
      );
      return servedSet({ ranking: drawn(new Map(appeal), delta, rng), served }, items);
    });
    const beliefs = worthBeliefs(sets, items, { rng, ties: [2], extras: PLACE_EFFECTS, draws: 1500 });
    centred(worth).forEach((w, i) => {
      hits.worths += covers(beliefs.interval[i] ?? { low: 0, high: 0 }, w);
      hits.of += 1;
    });
    [first, last].forEach((effect, i) => {
      hits.places += covers(beliefs.extra[i]?.interval ?? { low: 0, high: 0 }, effect);
      hits.ofPlaces += 1;
    });
  }
  const [worths, places] = [hits.worths / hits.of, hits.places / hits.ofPlaces];
  console.log(
    `LONG worths with ties and places, calibration | ${runs} tables, ${hits.of} worths | 95 % intervals cover ${(100 * worths).toFixed(1)} % (worths), ${(100 * places).toFixed(1)} % (places)`,
  );
  for (const share of [worths, places]) {
    expect(share).toBeGreaterThan(long ? 0.93 : 0.88);
    expect(share).toBeLessThanOrEqual(long ? 0.97 : 1);
  }
}, 600_000);

test("B5 calibration with judges that differ, each with one to three sheets", () => {
  const rng = repeatableRng(21);
  const runs = long ? 800 : 25;
  let [inside, all, least] = [0, 0, Infinity];
  for (let run = 0; run < runs; run += 1) {
    const [judges, items] = run % 2 === 0 ? [3, 4] : [6, 4];
    const worth = normal(items, WORTH_PRIOR.worthSd, rng);
    const sd = JUDGE_SPREADS[rng.below(JUDGE_SPREADS.length)] ?? 0;
    const rankings: JudgedRanking[] = [];
    for (let judge = 0; judge < judges; judge += 1) {
      const own = normal(items, sd, rng);
      const appeal = new Map(worth.map((w, i) => [i, w + (own[i] ?? 0)] as const));
      const sheets = 1 + rng.below(3);
      for (let sheet = 0; sheet < sheets; sheet += 1)
        rankings.push({ judge, ranking: drawn(appeal, 0, rng) });
    }
    const { common } = judgedBeliefs(rankings, items, { rng, draws: 6000 });
    least = Math.min(least, common.effective);
    centred(worth).forEach((w, i) => {
      inside += covers(common.interval[i] ?? { low: 0, high: 0 }, w);
      all += 1;
    });
  }
  console.log(
    `LONG worths with judges, calibration | ${runs} tables, ${all} worths | 95 % intervals cover ${((100 * inside) / all).toFixed(1)} %; draws worth ${least.toFixed(0)} or more`,
  );
  expect(inside / all).toBeGreaterThan(long ? 0.93 : 0.85);
  expect(inside / all).toBeLessThanOrEqual(long ? 0.97 : 1);
}, 600_000);

test("B5 the model that drew is the model that reads: ties of two come as often as it says", () => {
  const rng = repeatableRng(22);
  const pair = new Map([
    [0, 0.5],
    [1, -0.5],
  ]);
  const rankings: Ranking[] = Array.from({ length: 4000 }, () => drawn(pair, 0.8, rng));
  const tied = rankings.filter((ranking) => ranking.length === 1).length / 4000;
  expect(Math.abs(tied - 0.8 / (0.8 + Math.exp(0.5) + Math.exp(-0.5)))).toBeLessThan(0.03);
  expect(rankedSet(rankings[0] ?? [], 2).appeals.length).toBe(2);
});
