import { marksOrOrder } from "@partsproof/core/learning";
import { type FlightEvidence, ofLiking, rankingsOf } from "../evidence/index.ts";
import { type NamedMark, scoresOf } from "./tried-scores.ts";

/** Groups of ties by name in the glass, best first. */
export interface NamedRanking {
  readonly flightId: string;
  readonly tasterId: string;
  readonly places: readonly (readonly string[])[];
}

/** What one sheet says of its glasses: how they were scored, or else their order. */
export type SaidOfGlasses =
  | NamedRanking
  | { readonly flightId: string; readonly tasterId: string; readonly marks: readonly NamedMark[] };

/**
 * What sheets of revealed flights say, newest first: of closeness to the target where any do, else of liking. A sheet counts once, by its
 * scores or by its order (`marksOrOrder`); one of liking where a target is sought by its order alone, as its scores are not of closeness. In an order a glass poured twice stands where it was put first. A pair of which the better was
 * asked for is an order of two.
 */
export function triedRankings(
  flights: readonly FlightEvidence[],
  target: string | null,
): { readonly by: "liking" | "closeness"; readonly said: readonly SaidOfGlasses[] } {
  const close = flights.filter(
    ({ question, targetNameId }) => question === "how_close" && targetNameId === target,
  );
  const told = target === null ? [] : named(close, true);
  return told.length > 0
    ? { by: "closeness", said: told }
    : { by: "liking", said: liked(flights, target === null) };
}

/** What a pair is asked for where it asks which is liked better; common practice, no source. */
const LIKED: ReadonlySet<string> = new Set([
  "better",
  "better liked",
  "liked better",
  "liked more",
  "nicer",
  "preferred",
]);

function liked(flights: readonly FlightEvidence[], byScores: boolean): SaidOfGlasses[] {
  const whole = new Set(ofLiking(flights));
  return flights
    .toReversed()
    .flatMap((flight) => [...(whole.has(flight) ? named([flight], byScores) : []), ...chosen(flight)]);
}

/** Each pair of two glasses as an order of its own. */
function chosen({ flightId, glasses, sets }: FlightEvidence): NamedRanking[] {
  if (sets?.method !== "paired" || !LIKED.has(sets.asked?.trim().toLowerCase() ?? "")) return [];
  const [a, b] = glasses.map(({ nameId }) => nameId);
  if (a === undefined || b === undefined || a === b) return [];
  return sets.sheets.flatMap(({ tasterId, picked: [first = 0, second = 0] }) => [
    ...Array.from({ length: first }, () => ({ flightId, tasterId, places: [[a], [b]] })),
    ...Array.from({ length: second }, () => ({ flightId, tasterId, places: [[b], [a]] })),
  ]);
}

function named(flights: readonly FlightEvidence[], byScores: boolean): SaidOfGlasses[] {
  return flights.toReversed().flatMap((flight) =>
    flight.sheets.flatMap((sheet): SaidOfGlasses[] => {
      const by = { flightId: flight.flightId, tasterId: sheet.tasterId };
      const orders = rankingsOf([{ ...flight, sheets: [sheet] }]).map(({ ranking }) =>
        ranking.map((tie) => tie.map(({ key }) => key)),
      );
      const marks = byScores ? scoresOf(flight, sheet, orders) : [];
      if (marks.length > 1 && orders.every((places) => marksOrOrder(places, marks) === "marks"))
        return [{ ...by, marks }];
      return orders
        .map((places) => ({ ...by, places: once(places) }))
        .filter(({ places }) => places.flat().length > 1);
    }),
  );
}

function once(places: NamedRanking["places"]): string[][] {
  const seen = new Set<string>();
  return places
    .map((tie) =>
      tie.filter((name) => {
        const fresh = !seen.has(name);
        seen.add(name);
        return fresh;
      }),
    )
    .filter((tie) => tie.length > 0);
}
