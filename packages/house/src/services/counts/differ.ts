import {
  CHANCE_RIGHT,
  chanceRight,
  chanceWith,
  differenceP,
  estimateDPrime,
  likenessCritical,
  likenessP,
  luckVerdict,
  shownP,
} from "@partsproof/core/sensory";
import { criticalCount } from "@partsproof/core/statistics";
import type { BodyRead, DifferAnswer, CountsEffect } from "../../protocol/index.ts";
import { bounded, DEFAULT_LEVEL, percent, span } from "./told-numbers.ts";

/** The level of the critical counts: customary, and in their name. */
const CRITICAL_RISK = 0.05;

export function countsDiffer({
  test,
  right,
  of,
  sides = 1,
  level = DEFAULT_LEVEL,
  matters,
}: BodyRead<"countsDiffer">): DifferAnswer {
  const counted = { test, right, of };
  const p = differenceP(counted, sides);
  const critical5 = criticalCount(of, CHANCE_RIGHT[test], CRITICAL_RISK / sides);
  const estimate = estimateDPrime(counted, { level });
  const chance = CHANCE_RIGHT[test];
  const method = `exact binomial law, ${sides === 1 ? "one" : "two"}-sided, chance ${chance.numerator}/${chance.denominator}, answers independent; d′ by Thurstone's model`;
  return {
    ...counted,
    chance: chanceRight(test),
    sides,
    p,
    critical5,
    dPrime: bounded(estimate.dPrime),
    dPrimeInterval: span(estimate.interval),
    dPrimeExact: span(estimate.exactInterval),
    dPrimeReason:
      right === of
        ? { code: "all_right", message: `all ${of} were right: the most likely d′ has no bound` }
        : null,
    share: estimate.share,
    shareInterval: span(estimate.shareInterval),
    level,
    method,
    sentence: sentenceOf({ right, of, sides, p, critical5 }),
    likeness: matters === undefined ? null : likeness(counted, matters),
  };
}

function sentenceOf({
  right,
  of,
  sides,
  p,
  critical5,
}: Pick<DifferAnswer, "right" | "of" | "sides" | "p" | "critical5">): string {
  const count =
    sides === 1 ? `${right} of ${of} right` : `${Math.max(right, of - right)} of ${of} the same way`;
  const found = `${count}: that ${luckVerdict(p)} (${shownP(p)}).`;
  if (p < CRITICAL_RISK) return found;
  const would =
    critical5 === null
      ? `With ${of} even all would not rule luck out.`
      : `${critical5} of ${of} would have been hard to put down to luck.`;
  return `${found} ${would} That no difference was found does not show that there is none.`;
}

/** How large a difference is, in words. */
export const effectWords = (effect: CountsEffect): string =>
  "share" in effect ? `a difference that ${percent(effect.share)} can tell` : `a d′ of ${effect.dPrime}`;

function likeness(
  counted: Pick<DifferAnswer, "test" | "right" | "of">,
  matters: CountsEffect,
): NonNullable<DifferAnswer["likeness"]> {
  const p = likenessP(counted, matters);
  const critical5 = likenessCritical(counted.test, counted.of, matters, CRITICAL_RISK);
  const within = effectWords(matters);
  const sentence =
    p <= CRITICAL_RISK
      ? `It is smaller than ${within}: as few right would be rare if it were that large (${shownP(p)}).`
      : critical5 === null
        ? `${counted.of} answers are too few to show that it is smaller than ${within} (${shownP(p)}).`
        : `That it is smaller than ${within} is not shown (${shownP(p)}); at most ${critical5} right would show it.`;
  return { chance: chanceWith(counted.test, matters), p, critical5, sentence };
}
