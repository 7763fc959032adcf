import { chanceRight, chanceWith, dPrimeAt, luckVerdict } from "@partsproof/core/sensory";
import { anytimeInterval, logEvidence, waldLines } from "@partsproof/core/statistics";
import type { BodyRead, InTurnAnswer } from "../../protocol/index.ts";
import { effectWords } from "./differ.ts";
import { DEFAULT_LEVEL, span } from "./told-numbers.ts";

/** Answers looked at one after the other: what may be said at any moment, and whether to stop. */
export function countsInTurn({
  test,
  results,
  effect = { share: 0.5 },
  alpha = 0.05,
  beta = 0.2,
  level = DEFAULT_LEVEL,
}: BodyRead<"countsInTurn">): InTurnAnswer {
  const p0 = chanceRight(test);
  const p1 = chanceWith(test, effect);
  const of = results.length;
  let [right, most] = [0, 0];
  let foundAt: number | null = null;
  let decided: { readonly verdict: InTurnAnswer["wald"]["verdict"]; readonly at: number } | null = null;
  const wald = { p0, p1, alpha, beta };
  for (const [i, result] of results.entries()) {
    right += Number(result);
    most = Math.max(most, logEvidence(right, i + 1, { p0, shows: "above" }));
    if (foundAt === null && Math.exp(-most) <= alpha) foundAt = i + 1;
    const { upper, lower } = waldLines(wald, i + 1);
    if (decided === null && right >= upper) decided = { verdict: "difference", at: i + 1 };
    if (decided === null && right <= lower) decided = { verdict: "less than the effect", at: i + 1 };
  }
  const anytimeP = Math.exp(-most);
  const interval = anytimeInterval(results, level);
  const known = interval.low <= interval.high;
  const { upper, lower } = waldLines(wald, of);
  const stop =
    decided === null
      ? "Wald's test says: go on."
      : decided.verdict === "difference"
        ? `Wald's test found a difference at answer ${decided.at}.`
        : `Wald's test found at answer ${decided.at} that it is less than ${effectWords(effect)}.`;
  return {
    test,
    right,
    of,
    chance: p0,
    anytimeP,
    foundAt,
    chanceInterval: known ? span(interval) : [null, null],
    dPrimeInterval: known
      ? span({ low: dPrimeAt(test, interval.low), high: dPrimeAt(test, interval.high) })
      : [null, null],
    level,
    wald: {
      verdict: decided?.verdict ?? "go on",
      at: decided?.at ?? null,
      upper,
      lower,
      chanceWithEffect: p1,
      alpha,
      beta,
    },
    method:
      "mixture martingale, valid whenever one stops (Ville's inequality); Wald's sequential probability ratio test of luck against the effect",
    sentence: `${right} of ${of} right, looked at after every answer: that ${luckVerdict(anytimeP)} (p = ${Number(anytimeP.toPrecision(2))}, at any moment). ${stop}`,
  };
}
