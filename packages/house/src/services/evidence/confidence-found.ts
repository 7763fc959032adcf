import { confidenceFound as scored, luckVerdict, shownP, type SureGuess } from "@partsproof/core/sensory";
import type { ConfidenceFound } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { plural } from "./counted.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { keptFor } from "./kept.ts";

const LEVEL = 0.95;
const CLEAR = 0.05;
const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** The glasses of each sheet that this taster named with a confidence. */
const sureGuesses = (flights: readonly FlightEvidence[], taster: string): SureGuess[][] =>
  flights.flatMap(({ sheets, glasses, offer }) => {
    const offered = Object.values(offer).reduce((sum, count) => sum + count, 0);
    return sheets
      .filter(({ tasterId }) => tasterId === taster)
      .map(({ order, guesses, sure }) =>
        order.flatMap((glass, i): SureGuess[] => {
          const [guess, said, truth] = [guesses[i], sure[i], glasses[glass]?.nameId ?? ""];
          if (guess === null || guess === undefined || said === null || said === undefined) return [];
          return [{ sure: said, right: guess === truth, byLuck: (offer[truth] ?? 0) / offered }];
        }),
      );
  });

/** W11: how well a taster's confidence fits what came true; null where none was said. */
export function confidenceFound(
  house: House,
  { id, name }: { readonly id: string; readonly name: string },
  flights: readonly FlightEvidence[],
): ConfidenceFound | null {
  const sheets = sureGuesses(flights, id).filter((guesses) => guesses.length > 0);
  const found = keptFor(house, "confidence", sheets, () => scored(sheets, LEVEL));
  if (found === null) return null;
  const { guesses, right, said, brier, interval, byLuck, calibrated, surer, groups } = found;
  const ends =
    interval === null
      ? "too few sheets for an interval"
      : `95 % ${Math.max(0, interval.low).toFixed(2)} to ${interval.high.toFixed(2)}`;
  const more = calibrated.expected > right ? "surer than right" : "less sure than right";
  return {
    sheets: sheets.length,
    guesses,
    right,
    said,
    score: brier.score,
    low: interval === null ? null : Math.max(0, interval.low),
    high: interval?.high ?? null,
    byLuck,
    level: LEVEL,
    p: calibrated.p,
    groups: groups.map(({ sure, right: hit, of, interval: { low, high } }) => ({
      sure,
      right: hit,
      of,
      low,
      high,
    })),
    fitSaid:
      calibrated.p < CLEAR
        ? `${name} was ${more}: ${percent(said)} sure on average, ${percent(right / guesses)} of ${plural(guesses, "glass", "glasses")} right, which ${luckVerdict(calibrated.p)} (${shownP(calibrated.p)}, exact, two-sided, glasses taken as independent).`
        : `${name} was ${percent(said)} sure on average, and ${percent(right / guesses)} of ${plural(guesses, "glass", "glasses")} were right: whether that fits cannot be told from so few (${shownP(calibrated.p)}, exact, two-sided, glasses taken as independent).`,
    surerSaid: surerOf(surer),
    scoreSaid: `Brier score ${brier.score.toFixed(2)} (${ends}); who knows nothing and says so scores ${byLuck.toFixed(2)} on average, 0 is perfect.`,
    method: `Brier's score over ${plural(guesses, "glass", "glasses")} of ${plural(sheets.length, "sheet")} on which it was said how sure; interval of the sheets' means by Student's law; each level's share right with its exact interval; that other tasters have pages too is not paid for`,
  };
}

function surerOf(surer: NonNullable<ReturnType<typeof scored>>["surer"]): string {
  if (surer === null)
    return "Whether they are surer where they are right is not worked out for so many sheets.";
  const { p, leastP } = surer;
  if (leastP >= CLEAR)
    return `Whether they are surer where they are right so few glasses cannot show (the least that p can be is ${shownP(leastP).replace("p = ", "")}).`;
  return p < CLEAR
    ? `They are surer where they are right, which ${luckVerdict(p)} (${shownP(p)}, exact, one-sided, given how many were right on each sheet).`
    : `They have not shown to be surer where they are right (${shownP(p)}, exact, one-sided, given how many were right on each sheet).`;
}
