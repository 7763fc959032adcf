import { type BeliefSense, bestWords, betterWords } from "@partsproof/core/sensory";
import {
  type JudgedBeliefs,
  repeatableRng,
  WORTH_PRIOR,
  type WorthBeliefs,
} from "@partsproof/core/statistics";
import type { CountsBeliefs } from "../../protocol/index.ts";
import { span } from "./told-numbers.ts";

/** What was asked is not known here, so that nothing is called liked: a ranking ranks, a comparison chooses. */
const SENSE: Readonly<Record<"sheet" | "comparison", BeliefSense>> = {
  sheet: { better: "ranked higher", best: "ranked highest" },
  comparison: { better: "chosen more often", best: "chosen most often" },
};

/** The same draws every time: who asks twice gets the same answer. */
export const fixedChance = () => repeatableRng(6);

/** So many draws that the answer comes in a second or two, however large the question. */
export const drawsFor = (placed: number, items: number): number =>
  2 * Math.round(Math.min(8000, Math.max(1000, 4e7 / (placed + items * items))) / 2);

/** What is believed of worths, as the API tells it. */
export function toldBeliefs(
  items: readonly string[],
  sheets: number,
  beliefs: WorthBeliefs,
  {
    judged = null,
    unit = "sheet",
  }: { readonly judged?: JudgedBeliefs["spread"] | null; readonly unit?: "sheet" | "comparison" } = {},
): CountsBeliefs {
  const { mean, interval, better, ranks, monteCarloError, ...more } = beliefs;
  const { worthSd, tieMean, tieSd } = WORTH_PRIOR;
  return {
    logWorth: [...mean],
    sd: [...more.sd],
    interval: interval.map(span),
    level: more.level,
    better: better.map((row) => [...row]),
    preferred: more.preferred.map((row) => [...row]),
    ranks: ranks.map((row) => [...row]),
    expectedRank: [...more.expectedRank],
    draws: more.draws,
    effective: more.effective,
    monteCarloError,
    prior: `log worths normal around 0 with sd ${worthSd}; ln of a tie's parameter normal around ${tieMean} with sd ${tieSd}`,
    method: "Bayesian worths, importance sampling; log worths less their mean",
    spread: judged === null ? null : judged.map((one) => ({ ...one })),
    sentences: sentencesOf(items, { sheets, ...(unit === "sheet" ? {} : { unit }) }, beliefs, SENSE[unit]),
  };
}

function sentencesOf(
  items: readonly string[],
  of: { readonly sheets: number; readonly unit?: string },
  { ranks, better, expectedRank, monteCarloError }: WorthBeliefs,
  sense: BeliefSense,
): string[] {
  const order = [...items.keys()].toSorted((a, b) => (expectedRank[a] ?? 0) - (expectedRank[b] ?? 0));
  const [first = 0, second = 1] = order;
  const name = (item: number): string => items[item] ?? "";
  const belief = (probability: number) => ({ probability, monteCarloError, ...of });
  return [
    bestWords(name(first), items.length, belief(ranks[first]?.[0] ?? 0), sense),
    betterWords(name(first), name(second), belief(better[first]?.[second] ?? 0), sense),
  ];
}
