import { luckVerdict, plainOdds, shownP } from "@partsproof/core/sensory";
import {
  type CountLaw,
  type KnownShare,
  knownShare,
  matchLaw,
  poolLaws,
  quotient,
  shrewdToldLaw,
} from "@partsproof/core/statistics";
import {
  type BodyRead,
  COUNTS_LIMITS,
  type CountsReason,
  type MatchAnswer,
  waysToKnow,
} from "../../protocol/index.ts";
import { type OfferedNames, offeredNames } from "./offered-names.ts";
import { DEFAULT_LEVEL, span } from "./told-numbers.ts";

const LONGEST_FRACTION = 41;

export function countsMatch({
  glasses,
  sheets = 1,
  right,
  pours,
  distractors = 0,
  told = false,
  level = DEFAULT_LEVEL,
}: BodyRead<"countsMatch">): MatchAnswer {
  const names = offeredNames(glasses, pours, distractors);
  const sheet = told ? shrewdToldLaw(glasses, names.columns) : matchLaw(names);
  const law = poolLaws(Array.from({ length: sheets }, () => sheet));
  const pAtLeast = law.pAtLeast(right);
  const { numerator, denominator } = law.fractionAtLeast(right);
  const fraction = `${numerator}/${denominator}`;
  const known = knownOf({ names, sheets, right, told, level, law, pours: pours ?? [] });
  const how = told
    ? "every name told as soon as it is given, and the likeliest one named"
    : "names put on the glasses at random";
  return {
    glasses,
    sheets,
    right,
    of: glasses * sheets,
    pAtLeast,
    fraction: fraction.length > LONGEST_FRACTION ? null : fraction,
    expected: law.mean,
    critical5: criticalOf(law),
    exactly: law.exactly.map((cases) => quotient(cases, law.total)),
    known: "code" in known ? null : { ...told3(known), level },
    knownReason: "code" in known ? known : null,
    method: `exact law of ${how}, each at most as often as it is on offer${sheets > 1 ? `, ${sheets} independent sheets pooled` : ""}; one-sided`,
    sentence: `${right} of ${glasses * sheets} right: ${plainOdds(pAtLeast)} would do as well by guessing; that ${luckVerdict(pAtLeast)} (${shownP(pAtLeast)}).`,
  };
}

const told3 = ({ share, interval, known }: KnownShare) => ({
  share,
  interval: span(interval),
  glasses: known,
});

function criticalOf(law: CountLaw): number | null {
  const k = law.exactly.findIndex((_, count) => law.pAtLeast(count) <= 0.05);
  return k < 0 ? null : k;
}

function knownOf({
  names,
  sheets,
  right,
  told,
  level,
  law,
  pours,
}: {
  readonly names: OfferedNames;
  readonly sheets: number;
  readonly right: number;
  readonly told: boolean;
  readonly level: number;
  readonly law: CountLaw;
  readonly pours: readonly number[];
}): KnownShare | CountsReason {
  if (told)
    return { code: "names_told", message: "what is known beforehand cannot be told from what was told" };
  if ((law.exactly[right] ?? 0n) === 0n)
    return {
      code: "cannot_come_up",
      message: `exactly ${right} right cannot come up: whoever has all others right has the last one right`,
    };
  if (waysToKnow(pours) > COUNTS_LIMITS.ways)
    return {
      code: "too_many_ways",
      message: `more than ${COUNTS_LIMITS.ways} ways to know so many of each whiskey`,
    };
  // Only the total counts.
  return knownShare(
    Array.from({ length: sheets }, (_, n) => ({ ...names, right: n === 0 ? right : 0 })),
    level,
  );
}
