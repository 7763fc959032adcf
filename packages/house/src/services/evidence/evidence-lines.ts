import type { RecipeFinding } from "../../protocol/index.ts";
import type { FlightEvidence } from "./flight-evidence.ts";

type Line = RecipeFinding["flights"][number];

/** The flights something rests on, newest first. */
export const linesOf = (flights: readonly FlightEvidence[]): Line[] =>
  flights
    .map(({ flightId, name, revealedAt, question, sheets }) => ({
      flightId,
      name,
      revealedAt,
      question,
      sheets: sheets.length,
    }))
    .toReversed();

/** Names as last called. */
export function labelsOf(flights: readonly FlightEvidence[]): Map<string, string> {
  return new Map(flights.flatMap(({ labels }) => [...labels]));
}

/** Glasses put in order of liking; an order of closeness is another matter. */
export const ofLiking = (flights: readonly FlightEvidence[]): FlightEvidence[] =>
  flights.filter(({ question }) => question !== "how_close");

export const pours = (flight: FlightEvidence, isIt: (nameId: string) => boolean): boolean =>
  flight.glasses.some(({ nameId }) => isIt(nameId));
