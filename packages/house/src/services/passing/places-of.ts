import type { SheetPlace } from "@partsproof/core/sensory";
import type { FlightEvidence } from "../evidence/index.ts";

/** Where the tasters of one flight put one blend. */
export interface FlightPlaces {
  readonly asked: "liked" | "close";
  /** What stood beside it, by name, each once. */
  readonly beside: readonly string[];
  readonly sheets: readonly (SheetPlace & { readonly tasterId: string })[];
}

/**
 * X6: the locked rankings that a recipe's batches stood in, flight by flight. A ranking with two glasses of the recipe, or with one
 * alone, says nothing of a place among others and is left out.
 */
export function placesOf(
  flights: readonly FlightEvidence[],
  isIt: (nameId: string) => boolean,
): readonly FlightPlaces[] {
  return flights.flatMap((flight): readonly FlightPlaces[] => {
    const nameAt = (glass: number): string => flight.glasses[glass]?.nameId ?? "";
    const sheets = flight.sheets.flatMap(({ tasterId, placed }) =>
      placed.flatMap(({ ranking }) => {
        const place = placeIn(ranking, (glass) => isIt(nameAt(glass)));
        return place === null ? [] : [{ ...place, tasterId }];
      }),
    );
    if (sheets.length === 0) return [];
    const others = flight.glasses.filter(({ nameId }) => !isIt(nameId)).map(({ label }) => label);
    return [
      {
        asked: flight.question === "how_close" ? "close" : "liked",
        beside: [...new Set(others)].toSorted(),
        sheets,
      },
    ];
  });
}

function placeIn(
  ranking: readonly (readonly number[])[],
  isIt: (glass: number) => boolean,
): SheetPlace | null {
  const of = ranking.flat().length;
  if (of < 2 || ranking.flat().filter(isIt).length !== 1) return null;
  const tie = ranking.findIndex((level) => level.some(isIt));
  const before = ranking.slice(0, tie).flat().length;
  const level = ranking[tie]!.length;
  return { place: before + (level + 1) / 2, of, level };
}
