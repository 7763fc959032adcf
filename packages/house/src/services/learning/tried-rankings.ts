import { type FlightEvidence, ofLiking, rankingsOf } from "../evidence/index.ts";

/** Groups of ties by name in the glass, best first. */
export interface NamedRanking {
  readonly flightId: string;
  readonly tasterId: string;
  readonly places: readonly (readonly string[])[];
}

/**
 * Orders of revealed flights, newest first: of closeness to the target where there are any, else of liking. A sheet with scores and no
 * order is put in order by them. A glass poured twice stands where it was put first. A pair of which the better was asked for is an
 * order of two.
 */
export function triedRankings(
  flights: readonly FlightEvidence[],
  target: string | null,
): { readonly by: "liking" | "closeness"; readonly rankings: readonly NamedRanking[] } {
  const close = flights.filter(
    ({ question, targetNameId }) => question === "how_close" && targetNameId === target,
  );
  const told = target === null ? [] : named(close);
  return told.length > 0 ? { by: "closeness", rankings: told } : { by: "liking", rankings: liked(flights) };
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

function liked(flights: readonly FlightEvidence[]): NamedRanking[] {
  const whole = new Set(ofLiking(flights));
  return flights
    .toReversed()
    .flatMap((flight) => [...(whole.has(flight) ? named([flight]) : []), ...chosen(flight)]);
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

function named(flights: readonly FlightEvidence[]): NamedRanking[] {
  return flights.toReversed().flatMap((flight) => {
    const ranked = rankingsOf([flight]).map(({ tasterId, ranking }) => ({
      tasterId,
      places: ranking.map((tie) => tie.map(({ key }) => key)),
    }));
    const silent = flight.sheets.filter(
      ({ placed, scores }) => placed.length === 0 && scores.filter((score) => score !== null).length > 1,
    );
    const scored = silent.map(({ tasterId, order, scores }) => {
      const by = new Map<number, string[]>();
      for (const [place, score] of scores.entries()) {
        const name = flight.glasses[order[place] ?? -1]?.nameId;
        if (score !== null && name !== undefined) by.set(score, [...(by.get(score) ?? []), name]);
      }
      return { tasterId, places: [...by].toSorted(([a], [b]) => b - a).map(([, names]) => names) };
    });
    return [...ranked, ...scored]
      .map(({ tasterId, places }) => ({ flightId: flight.flightId, tasterId, places: once(places) }))
      .filter(({ places }) => places.flat().length > 1);
  });
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
