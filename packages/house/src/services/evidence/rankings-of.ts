import type { RankedSet } from "@partsproof/core/statistics";
import type { FlightEvidence, Placed } from "./flight-evidence.ts";

/** One ranking of things by key, some perhaps twice, with the place effects of its first and last glass. */
export interface KeyedRanking {
  readonly flightId: string;
  readonly tasterId: string;
  /** Best (closest) first. */
  readonly ranking: readonly (readonly { readonly key: string; readonly place: "first" | "last" | null }[])[];
}

/** What a glass counts as; null leaves it out of the ranking. */
export type KeyOf = (flight: FlightEvidence, glass: number) => string | null;

const byName: KeyOf = (flight, glass) => flight.glasses[glass]?.nameId ?? null;

function keyed(flight: FlightEvidence, { ranking, served }: Placed, keyOf: KeyOf): KeyedRanking["ranking"] {
  const [first, last] = [served[0], served.at(-1)];
  return ranking
    .map((tie) =>
      tie.flatMap((glass) => {
        const key = keyOf(flight, glass);
        if (key === null) return [];
        return [{ key, place: glass === first ? "first" : glass === last ? "last" : null } as const];
      }),
    )
    .filter((tie) => tie.length > 0);
}

/** Every ranking of the locked sheets that says anything: of two glasses or more. */
export function rankingsOf(flights: readonly FlightEvidence[], keyOf: KeyOf = byName): KeyedRanking[] {
  return flights.flatMap((flight) =>
    flight.sheets.flatMap(({ tasterId, placed }) =>
      placed
        .map((one) => ({ flightId: flight.flightId, tasterId, ranking: keyed(flight, one, keyOf) }))
        .filter(({ ranking }) => ranking.flat().length > 1),
    ),
  );
}

/** As the model reads it: each glass its thing's worth, the first and the last what their place does. */
export function rankedSetOf({ ranking }: KeyedRanking, numbers: ReadonlyMap<string, number>): RankedSet {
  return {
    appeals: ranking.flat().map(({ key, place }) => {
      const item = [numbers.get(key) ?? 0, 1] as const;
      return place === null ? [item] : [item, [numbers.size + (place === "first" ? 0 : 1), 1] as const];
    }),
    sizes: ranking.map((tie) => tie.length),
    times: 1,
  };
}
