import type { RecipeFinding, WorthsFound } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import type { BatchRow, RecipeRow } from "../rows.ts";
import { apartFound } from "./apart-found.ts";
import { labelsOf, linesOf, ofLiking, pours } from "./evidence-lines.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { mixUpsFound, namedSheets } from "./mix-ups-found.ts";
import { rankingsOf } from "./rankings-of.ts";
import { scoresFound } from "./scores-found.ts";
import { wordsFound } from "./words-found.ts";
import { claimOf, worthsFound } from "./worths-found.ts";

/** Everything known of a recipe: its batches taken together, in all flights they stood in. */
export function recipeFinding(
  house: House,
  recipe: RecipeRow,
  batches: readonly BatchRow[],
  all: readonly FlightEvidence[],
): RecipeFinding {
  const ours = new Set(batches.map(({ id }) => `batch:${id}`));
  const key = `recipe:${recipe.id}`;
  const rename = (nameId: string): string => (ours.has(nameId) ? key : nameId);
  const isOurs = (nameId: string): boolean => ours.has(nameId);
  const flights = all.filter((flight) => pours(flight, isOurs));
  const labels = labelsOf(flights).set(key, recipe.name);
  const keyOf = (flight: FlightEvidence, glass: number) => rename(flight.glasses[glass]?.nameId ?? "");
  const worths = worthsFound(house, { rankings: rankingsOf(ofLiking(flights), keyOf), labels, about: key });
  const byTarget = Map.groupBy(
    flights.filter(({ question }) => question === "how_close"),
    ({ targetNameId }) => targetNameId ?? "",
  );
  const closeness = [...byTarget].flatMap(
    ([target, own]) =>
      worthsFound(house, {
        rankings: rankingsOf(own, keyOf),
        labels,
        about: key,
        closeTo: labels.get(target) ?? "",
        target: rename(target),
      }) ?? [],
  );
  const apart = apartFound(flights, labels, { rename, about: key });
  return {
    recipeId: recipe.id,
    name: recipe.name,
    headline: headlineOf(
      recipe.name,
      key,
      worths ?? closeness[0] ?? null,
      apart[0]?.sentence,
      flights.length,
    ),
    flights: linesOf(flights),
    batches: batches.map(({ id, name, recipeNumber }) => {
      const isIt = (nameId: string): boolean => nameId === `batch:${id}`;
      const own = flights.filter((flight) => pours(flight, isIt));
      return {
        batchId: id,
        name,
        version: recipeNumber,
        flights: own.length,
        sheets: own.reduce(
          (sum, { sheets, glasses }) =>
            sum +
            sheets.filter(({ order }) => order.some((glass) => isIt(glasses[glass]?.nameId ?? ""))).length,
          0,
        ),
        scores: scoresFound(own, isIt),
      };
    }),
    worths,
    closeness,
    mixUps: mixUpsFound(house, namedSheets(flights, rename), labels, key),
    apart,
    scores: scoresFound(flights, isOurs),
    words: wordsFound(flights, isOurs),
  };
}

/** Who is ahead, in the words of the belief; where it is another, what lies between it and ours. */
export function headlineOf(
  name: string,
  key: string,
  worths: WorthsFound | null,
  else_: string | undefined,
  flights: number,
): string {
  if (flights === 0) return `${name} has stood in no revealed flight yet`;
  if (worths === null) return else_ ?? `${name} was in no ranking with anything else`;
  const [leader] = worths.items;
  if (leader?.key === key) return claimOf(worths.best.sentence);
  const beside = worths.pairs.find(({ other }) => other === leader?.key);
  return beside === undefined ? claimOf(worths.best.sentence) : claimOf(beside.sentence);
}
