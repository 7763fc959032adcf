import { meanInterval } from "@partsproof/core/statistics";
import type { ScoresFound } from "../../protocol/index.ts";
import { plural } from "./counted.ts";
import type { FlightEvidence } from "./flight-evidence.ts";

const LEVEL = 0.95;

/** W6: the mean of the tasters' means, so that one taster's many sheets count once; null without scores. */
export function scoresFound(
  flights: readonly FlightEvidence[],
  isIt: (nameId: string) => boolean,
): ScoresFound | null {
  const scores = flights.flatMap((flight) =>
    flight.sheets.flatMap(({ tasterId, order, scores: own }) =>
      order.flatMap((glass, i) => {
        const score = own[i] ?? null;
        return score === null || !isIt(flight.glasses[glass]?.nameId ?? "") ? [] : [{ tasterId, score }];
      }),
    ),
  );
  if (scores.length === 0) return null;
  const means = [...Map.groupBy(scores, ({ tasterId }) => tasterId).values()].map(
    (own) => own.reduce((sum, { score }) => sum + score, 0) / own.length,
  );
  const { mean, interval, sd } = meanInterval(means, LEVEL);
  const how = `${plural(scores.length, "score")} by ${plural(means.length, "taster")}`;
  const within = interval !== null && sd !== 0 ? interval : null;
  return {
    mean,
    low: within && Math.max(0, within.low),
    high: within && Math.min(100, within.high),
    tasters: means.length,
    scores: scores.length,
    level: LEVEL,
    sentence:
      within === null
        ? `Scored ${mean.toFixed(1)} of 100: ${how}${interval === null ? "; one taster says nothing about others" : "; all alike, which is no certainty"}.`
        : `Scored ${mean.toFixed(1)} of 100, ${Math.max(0, within.low).toFixed(1)} to ${Math.min(100, within.high).toFixed(1)} (95 %, Student's interval of the tasters' means, ${how}).`,
  };
}
