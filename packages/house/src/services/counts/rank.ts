import { rankingWords } from "@partsproof/core/sensory";
import {
  chiSquareUpperTail,
  friedman,
  type Friedman,
  judgedBeliefs,
  type MostLikelyWorths,
  type NoMaximum,
  plackettLuce,
  plackettLuceServed,
  rankedSet,
  type Ranking,
  servedSet,
  worthBeliefs,
} from "@partsproof/core/statistics";
import type { BodyRead, CountsBeliefs, CountsReason, RankAnswer } from "../../protocol/index.ts";
import { drawsFor, fixedChance, toldBeliefs } from "./beliefs.ts";
import { toldNoMaximum } from "./no-maximum.ts";
import { DEFAULT_LEVEL } from "./told-numbers.ts";

interface Numbered {
  readonly items: readonly string[];
  readonly rankings: readonly Ranking[];
  readonly served: readonly (readonly number[])[] | null;
  readonly judges: readonly number[] | null;
  readonly level: number;
}

export function countsRank(body: BodyRead<"countsRank">): RankAnswer {
  const { items } = body;
  const place = new Map(items.map((name, n) => [name, n]));
  const number = (name: string): number => place.get(name) ?? -1;
  const tasters = body.tasters === undefined ? null : [...new Set(body.tasters)];
  const asked: Numbered = {
    items,
    rankings: body.rankings.map((ranking) => ranking.map((group) => group.map(number))),
    served: body.served?.map((order) => order.map(number)) ?? null,
    judges: body.tasters?.map((taster) => tasters?.indexOf(taster) ?? 0) ?? null,
    level: body.level ?? DEFAULT_LEVEL,
  };
  const test = friedmanOf(asked);
  const ranked = "code" in test && !("ok" in test) ? null : test;
  return {
    items: [...items],
    rankings: asked.rankings.length,
    friedman: toldFriedman(test),
    kendallW: ranked?.ok === true ? ranked.kendallW : null,
    plackettLuce: toldWorths(mostLikely(asked), items, asked.served !== null),
    bayesian: beliefsOf(asked),
    sentence: ranked === null ? (test as CountsReason).message : rankingWords(ranked),
  };
}

/** Ranks of every item in every ranking, ties sharing one; null where one lacks an item. */
function rankTableOf({ items, rankings }: Numbered): number[][] | null {
  const rows = rankings.map((ranking) => {
    const row = Array.from({ length: items.length }, () => 0);
    for (const [place, group] of ranking.entries()) for (const item of group) row[item] = place + 1;
    return row;
  });
  return rows.some((row) => row.includes(0)) ? null : rows;
}

function friedmanOf(asked: Numbered): Friedman | CountsReason {
  const table = rankTableOf(asked);
  if (table !== null) return friedman(table);
  const lacking = asked.rankings.findIndex((ranking) => ranking.flat().length < asked.items.length);
  return {
    code: "not_all_poured",
    message: `Friedman's test requires every item in every ranking, and ranking ${lacking + 1} has ${asked.rankings[lacking]?.flat().length} of ${asked.items.length}`,
  };
}

function toldFriedman(test: Friedman | CountsReason): RankAnswer["friedman"] {
  const none = { statistic: null, df: null, p: null, method: null, pChiSquare: null };
  if (!("ok" in test)) return { ...none, rankSums: null, reason: test };
  const rankSums = [...test.rankSums];
  if (!test.ok)
    return {
      ...none,
      rankSums,
      reason: { code: test.code, message: "every ranking is one big tie: there is nothing to test" },
    };
  const { statistic, df, p, method } = test;
  return { statistic, df, p, method, pChiSquare: chiSquareUpperTail(statistic, df), rankSums, reason: null };
}

function mostLikely({ items, rankings, served }: Numbered): MostLikelyWorths | NoMaximum {
  if (served === null) return plackettLuce(rankings, items.length);
  const both = rankings.map((ranking, n) => ({ ranking, served: served[n] ?? [] }));
  return plackettLuceServed(both, items.length);
}

function toldWorths(
  worths: MostLikelyWorths | NoMaximum,
  items: readonly string[],
  placed: boolean,
): RankAnswer["plackettLuce"] {
  if (!worths.ok)
    return {
      logWorth: null,
      standardError: null,
      ties: null,
      placeEffects: null,
      logLikelihood: null,
      reason: toldNoMaximum(worths, items),
    };
  const [first, last] = worths.extra;
  return {
    logWorth: [...worths.logWorth],
    standardError: [...worths.standardError],
    ties: worths.ties.map((tie) => ({ ...tie })),
    placeEffects: placed && first && last ? { first: { ...first }, last: { ...last } } : null,
    logLikelihood: worths.logLikelihood,
    reason: null,
  };
}

function beliefsOf({ items, rankings, served, judges, level }: Numbered): CountsBeliefs {
  const placed = rankings.reduce((sum, ranking) => sum + ranking.flat().length, 0);
  const draws = drawsFor(placed, items.length);
  if (judges !== null) {
    const judged = rankings.map((ranking, n) => ({
      ranking,
      judge: judges[n] ?? 0,
      ...(served === null ? {} : { served: served[n] ?? [] }),
    }));
    const { common, spread } = judgedBeliefs(judged, items.length, {
      rng: fixedChance(),
      level,
      draws: 2 * draws,
    });
    return toldBeliefs(items, rankings.length, common, { judged: spread });
  }
  const sets = rankings.map((ranking, n) =>
    served === null
      ? rankedSet(ranking, items.length)
      : servedSet({ ranking, served: served[n] ?? [] }, items.length),
  );
  const extras = served === null ? 0 : 2;
  const beliefs = worthBeliefs(sets, items.length, { rng: fixedChance(), level, draws, extras });
  return toldBeliefs(items, rankings.length, beliefs);
}
