import { plainChance, plainOdds } from "@partsproof/core/sensory";
import type { CountLaw, FriedmanTest } from "@partsproof/core/statistics";
import type { Chance } from "../../protocol/index.ts";
import type { z } from "zod";

/** A fraction longer than this is no help to a reader; the probability stands beside it. */
const MOST_DIGITS = 12;

/** How likely `right` or more by guessing at random, exactly. */
export function luckOf(law: CountLaw, right: number, method: string): z.infer<typeof Chance> {
  const p = law.pAtLeast(right);
  const { numerator, denominator } = law.fractionAtLeast(right);
  return { p, fraction: shortFraction(`${numerator}/${denominator}`), words: plainChance(p), method };
}

export function shortFraction(fraction: string): string | null {
  return fraction.slice(fraction.indexOf("/") + 1).length > MOST_DIGITS ? null : fraction;
}

/** How likely rankings made at random agree as much, or more. */
export function rankLuckOf(test: FriedmanTest): z.infer<typeof Chance> {
  const { p } = test;
  const words =
    p === 1
      ? "every panel ranking at random would agree as much"
      : `${plainOdds(p)} panels ranking at random would agree as much`;
  const method =
    test.method === "exact"
      ? "Friedman's test, exact, ties kept"
      : `Friedman's test, chi-square approximation with ${test.df} degrees of freedom`;
  return { p, fraction: null, words, method };
}
