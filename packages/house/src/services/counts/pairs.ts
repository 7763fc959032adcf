import {
  mostLikelyWorths,
  pairSets,
  type PairTable,
  type RankedSet,
  servedPairSets,
  worthBeliefs,
} from "@partsproof/core/statistics";
import type { BodyRead, PairsAnswer } from "../../protocol/index.ts";
import { drawsFor, fixedChance, toldBeliefs } from "./beliefs.ts";
import { toldNoMaximum } from "./no-maximum.ts";
import { DEFAULT_LEVEL } from "./told-numbers.ts";

export function countsPairs(body: BodyRead<"countsPairs">): PairsAnswer {
  const { items, level = DEFAULT_LEVEL } = body;
  const ordered = body.served !== undefined;
  const extras = Number(ordered);
  const sets = setsOf(body);
  const comparisons = sets.reduce((sum, { times }) => sum + times, 0);
  const fit = mostLikelyWorths(sets, items.length, extras);
  const beliefs = worthBeliefs(sets, items.length, {
    rng: fixedChance(),
    level,
    extras,
    draws: drawsFor(2 * sets.length, items.length),
  });
  const [order] = fit.ok ? fit.extra : [];
  return {
    items: [...items],
    comparisons,
    logWorth: fit.ok ? [...fit.logWorth] : null,
    standardError: fit.ok ? [...fit.standardError] : null,
    tieParameter: fit.ok ? (fit.ties[0]?.delta ?? 0) : null,
    orderEffect: ordered && order ? { ...order } : null,
    logLikelihood: fit.ok ? fit.logLikelihood : null,
    reason: fit.ok ? null : toldNoMaximum(fit, items),
    bayesian: toldBeliefs(items, comparisons, beliefs, { unit: "comparison" }),
  };
}

function setsOf({ items, wins, ties, served }: BodyRead<"countsPairs">): RankedSet[] {
  if (served === undefined) {
    const table: PairTable = ties === undefined ? { wins: wins ?? [] } : { wins: wins ?? [], ties };
    return pairSets(table);
  }
  const place = new Map(items.map((name, n) => [name, n]));
  return servedPairSets(
    served.map(({ first, second, firstWon, secondWon, tied = 0 }) => ({
      first: place.get(first) ?? -1,
      second: place.get(second) ?? -1,
      firstWon,
      secondWon,
      tied,
    })),
    items.length,
  );
}
