import { canAnswer, QUESTIONS } from "@partsproof/core/sensory";
import type { SetsFound } from "../../protocol/index.ts";
import { designOf, questionOf } from "../flights/index.ts";
import type { FlightRow } from "../rows.ts";

/** A difference that this share of the panel can tell, at the customary risks, is what needs are told for. */
const SHARE = 50;
const RISKS = { alpha: 0.05, beta: 0.2 };

interface Says {
  readonly canSay: string[];
  readonly cannotSay: string[];
}

/** Q16: what the flight can say and what not, in core's words, with what its panel adds to that. */
export function saysOf(flight: FlightRow, sets: SetsFound | null, counted: number): Says {
  const question = questionOf(flight);
  const { can, cannot } = QUESTIONS[question];
  if (sets !== null && (question === "tell_apart" || question === "changed") && sets.answered > 0)
    return ofSets(flight, sets, question);
  return {
    canSay: [can],
    cannotSay: [...cannot, ...(counted === 1 ? ["With one taster it speaks of that taster only."] : [])],
  };
}

function ofSets(flight: FlightRow, sets: SetsFound, question: "tell_apart" | "changed"): Says {
  const { method, sides, answered, needed } = sets;
  const ask = { question, method, sides, share: SHARE } as const;
  const tasters = sets.sheets.filter((sheet) => sheet.answered > 0).length;
  const sittings = designOf(flight).setsEach;
  // What was poured is no shortage any more.
  const atHand = { tasters, sittings, pourMl: flight.pourMl, leftMl: [Infinity, Infinity] };
  const { cannot, fewest, trials } = canAnswer(ask, atHand, RISKS);
  const half = "A difference that half of the panel can tell";
  return {
    canSay: [
      QUESTIONS[question].can,
      ...(needed === null
        ? []
        : [`${needed} of ${answered} right or more would be hard to put down to luck.`]),
      ...(trials !== null && answered >= trials.smallest
        ? [`${half} would be found by ${answered} sets at least four times in five.`]
        : []),
    ],
    cannotSay: [
      ...(answered < fewest
        ? [`With ${answered} of at least ${fewest} sets even a perfect result would not rule luck out.`]
        : []),
      ...(trials !== null && answered < trials.smallest
        ? [`${half} takes ${trials.smallest} sets to be found four times in five; there were ${answered}.`]
        : []),
      ...cannot,
    ],
  };
}
