import { glassesPoured } from "./glasses-poured.ts";
import { type Needs, type QuestionAsk, questionNeeds, type Risks } from "./question-needs.ts";
import { QUESTIONS } from "./questions.data.ts";

export interface AtHand {
  readonly tasters: number;
  readonly sittings: number;
  readonly pourMl: number;
  /** Millilitres to use of each whiskey, in the order of `glassesPoured`. */
  readonly leftMl: readonly number[];
}

/** Why a question cannot be answered with what is at hand. */
export interface Shortage {
  readonly code: "never_enough" | "too_few_for_any" | "too_few_for_risk" | "too_little_left";
  readonly limit: number;
  readonly received: number;
  readonly message: string;
}

export interface Answerable extends Needs {
  readonly sentence: string;
  /** Trials at hand: tasters times sittings. */
  readonly trialsAtHand: number;
  readonly shortages: readonly Shortage[];
  /** What the question does not answer however many glasses there are, and what this panel adds to that. */
  readonly cannot: readonly string[];
}

const percent = (risk: number): string => `${Number((100 * risk).toPrecision(3))} %`;

/**
 * Whether a question can be answered with the tasters, sittings and millilitres at hand, and if not, what is missing. A
 * legitimate "no" is a list of shortages; an empty list means that the question can be answered at the risks named.
 *
 * Every sitting of every taster counts as one trial of its own. That is right for "does this panel find a difference" and wrong
 * for "nobody can": with repeats the standards (ISO 4120, ISO 10399) allow the first and not the second, and it is said.
 *
 * @throws RangeError when a number is outside its range, or there is not one volume a whiskey
 */
export function canAnswer(ask: QuestionAsk, atHand: AtHand, risks: Risks): Answerable {
  const needs = questionNeeds(ask, risks);
  const { tasters, sittings, pourMl, leftMl } = atHand;
  if (![tasters, sittings].every((count) => Number.isInteger(count) && count >= 1)) {
    throw new RangeError(
      `canAnswer requires a whole 1 or more tasters and sittings, got ${tasters} and ${sittings}`,
    );
  }
  if (!(pourMl > 0 && pourMl < Infinity))
    throw new RangeError(`a pour requires more than 0 mL, got ${pourMl} mL`);
  const trialsAtHand = tasters * sittings;
  const poured = glassesPoured(ask, needs.trials?.smallest ?? trialsAtHand);
  if (leftMl.length !== poured.length || !leftMl.every((ml) => ml >= 0)) {
    throw new RangeError(
      `canAnswer requires ${poured.length} volumes of 0 mL or more, got [${leftMl.join(", ")}] mL`,
    );
  }
  const shortages: Shortage[] = [];
  const short = (code: Shortage["code"], limit: number, received: number, message: string): void =>
    void shortages.push({ code, limit, received, message });
  const had = `got ${trialsAtHand} (${tasters} ${tasters === 1 ? "taster" : "tasters"}, ${sittings} ${sittings === 1 ? "sitting" : "sittings"})`;

  if (trialsAtHand < needs.fewest) {
    short(
      "too_few_for_any",
      needs.fewest,
      trialsAtHand,
      `even a perfect result requires ${needs.fewest} trials to be hard to put down to luck, ${had}`,
    );
  }
  if (needs.trials === null) {
    short(
      "never_enough",
      0,
      trialsAtHand,
      `so small a difference requires more trials than a home can pour, ${had}`,
    );
  } else if (trialsAtHand < needs.trials.smallest) {
    const { smallest } = needs.trials;
    const why = `to be missed no more often than ${percent(risks.beta)}`;
    short(
      "too_few_for_risk",
      smallest,
      trialsAtHand,
      `such a difference requires ${smallest} trials ${why}, ${had}`,
    );
  }
  for (const [i, glasses] of poured.entries()) {
    const limit = glasses * pourMl;
    const left = leftMl[i] ?? 0;
    if (left + 1e-9 >= limit) continue;
    short(
      "too_little_left",
      limit,
      left,
      `whiskey ${i + 1} requires ${limit} mL for ${glasses} glasses of ${pourMl} mL, got ${left} mL`,
    );
  }
  const { sentence, cannot } = QUESTIONS[ask.question];
  const panel = [
    ...(tasters === 1 ? ["With one taster it speaks of that taster only."] : []),
    ...(tasters > 1 && sittings > 1
      ? ["With several sittings a taster it can show that somebody tells, not that nobody can."]
      : []),
  ];
  return { ...needs, sentence, trialsAtHand, shortages, cannot: [...cannot, ...panel] };
}
