import {
  CHANCE_RIGHT,
  chanceRight,
  chanceWith,
  differenceNeeds,
  differencePower,
} from "@partsproof/core/sensory";
import {
  binomialTailChance,
  criticalCount,
  knownLaws,
  matchLaw,
  poolLaws,
  rankingPower,
  sequentialRisks,
  type Verdict,
  waldLines,
} from "@partsproof/core/statistics";
import type { BodyRead, CouldShowAnswer } from "../../protocol/index.ts";
import { fixedChance } from "./beliefs.ts";
import { effectWords } from "./differ.ts";
import { offeredNames } from "./offered-names.ts";
import { percent, span } from "./told-numbers.ts";

type Asked<K extends CouldShowAnswer["of"]> = Extract<BodyRead<"countsCouldShow">, { readonly of: K }>;

const DEFAULTS = { alpha: 0.05, beta: 0.2 } as const;

/** Before a flight: what the chosen numbers could show. */
export function countsCouldShow(asked: BodyRead<"countsCouldShow">): CouldShowAnswer {
  switch (asked.of) {
    case "differ":
      return differ(asked);
    case "in-turn":
      return inTurn(asked);
    case "match":
      return match(asked);
    case "rank":
      return rank(asked);
  }
}

const nothing = {
  powerInterval: null,
  falseFinding: null,
  critical: null,
  needs: null,
  expectedTrials: null,
  bestFirst: null,
} as const;

const chances = (power: number): string => `${(100 * power).toFixed(0)} in 100`;

function differ({
  test,
  trials,
  effect,
  alpha = DEFAULTS.alpha,
  beta = DEFAULTS.beta,
}: Asked<"differ">): CouldShowAnswer {
  const power = differencePower(test, trials, effect, alpha);
  const critical = criticalCount(trials, CHANCE_RIGHT[test], alpha);
  const needs = differenceNeeds(test, { there: effect, alpha, beta });
  const need =
    needs === null
      ? `More than 400 answers would be needed to miss it no more often than ${percent(beta)}.`
      : `${needs.smallest} answers miss it no more often than ${percent(beta)}.`;
  return {
    ...nothing,
    of: "differ",
    power,
    falseFinding: critical === null ? 0 : binomialTailChance(trials, critical, CHANCE_RIGHT[test]),
    critical,
    alpha,
    needs: needs === null ? null : { beta, smallest: needs.smallest, stable: needs.stable },
    method: "exact binomial power",
    sentence: `${trials} answers find ${effectWords(effect)} in ${chances(power)} cases. ${need}`,
  };
}

function inTurn({
  test,
  trials,
  effect,
  alpha = DEFAULTS.alpha,
  beta = DEFAULTS.beta,
}: Asked<"in-turn">): CouldShowAnswer {
  const [p0, p1] = [chanceRight(test), chanceWith(test, effect)];
  const lines = Array.from({ length: trials }, (_, i) => waldLines({ p0, p1, alpha, beta }, i + 1));
  const rule = (right: number, n: number): Verdict => {
    const line = lines[n - 1];
    if (line === undefined) return "go on";
    return right >= line.upper ? "upper" : right <= line.lower ? "lower" : "go on";
  };
  const [there, luck] = [sequentialRisks(rule, p1, trials), sequentialRisks(rule, p0, trials)];
  return {
    ...nothing,
    of: "in-turn",
    power: there.upper,
    falseFinding: luck.upper,
    alpha,
    expectedTrials: { withEffect: there.expectedTrials, byLuck: luck.expectedTrials },
    method: "Wald's test, every path counted",
    sentence: `Given one at a time, ${trials} at most, they find ${effectWords(effect)} in ${chances(there.upper)} cases, after ${there.expectedTrials.toFixed(1)} on average.`,
  };
}

function match({
  glasses,
  sheets = 1,
  pours,
  distractors,
  known,
  alpha = DEFAULTS.alpha,
}: Asked<"match">): CouldShowAnswer {
  const names = offeredNames(glasses, pours, distractors);
  const pooled = <T>(one: T): T[] => Array.from({ length: sheets }, () => one);
  const luck = poolLaws(pooled(matchLaw(names)));
  const found = luck.exactly.findIndex((cases, k) => cases > 0n && luck.pAtLeast(k) <= alpha);
  const critical = found < 0 ? null : found;
  const power = critical === null ? 0 : skilled(knownLaws(names)[known] ?? [], sheets, critical);
  return {
    ...nothing,
    of: "match",
    power,
    falseFinding: critical === null ? 0 : luck.pAtLeast(critical),
    critical,
    alpha,
    method: "exact law of right names, sheets pooled",
    sentence:
      critical === null
        ? `Even all names right would not rule luck out: more sheets or more glasses are needed.`
        : `Somebody who knows ${known} of ${glasses} is found in ${chances(power)} cases: it takes ${critical} right of ${glasses * sheets}.`,
  };
}

/** P(at least so many right over the sheets) for one whose sheets each follow `law`. */
function skilled(law: readonly number[], sheets: number, critical: number): number {
  let total = [1];
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    const next = Array.from({ length: total.length + law.length - 1 }, () => 0);
    for (const [i, a] of total.entries())
      for (const [j, b] of law.entries()) next[i + j] = (next[i + j] ?? 0) + a * b;
    total = next;
  }
  return Math.min(
    1,
    total.slice(critical).reduce((sum, p) => sum + p, 0),
  );
}

function rank({ sheets, logWorth, alpha = DEFAULTS.alpha, flights = 1000 }: Asked<"rank">): CouldShowAnswer {
  const { power, interval, bestFirst } = rankingPower(
    { logWorth, judges: sheets, alpha },
    fixedChance(),
    flights,
  );
  return {
    ...nothing,
    of: "rank",
    power,
    powerInterval: span(interval),
    alpha,
    bestFirst,
    method: `Friedman's test on ${flights} simulated flights, the same every time`,
    sentence: `${sheets} ${sheets === 1 ? "sheet" : "sheets"} of ${logWorth.length} glasses agree beyond luck in ${chances(power)} such flights; the best comes out first in ${chances(bestFirst)}.`,
  };
}
