import { ResultFile, type RecipeResults } from "../../protocol/index.ts";
import type { House, Reads } from "../ports.ts";
import type { RecipeRow } from "../rows.ts";
import { namedLabel } from "./named-whiskey.ts";
import { ownPlaces } from "./own-places.ts";
import { type Placed, placesFound } from "./places-found.ts";

type Kitchen = RecipeResults["kitchens"][number];
type Pooled = Pick<RecipeResults, "kitchens" | "liked" | "close">;

/** X7: kitchen by kitchen and together. A taster of one kitchen is nobody of another, whatever they are called. */
export async function kitchensOf(
  house: House,
  records: Reads,
  { id, householdId }: RecipeRow,
): Promise<Pooled> {
  const own = await ownPlaces(house, records, householdId, id);
  const here = own.map(({ asked, sheets }, flight) =>
    sheets.map(({ tasterId, ...place }) => ({
      asked,
      placed: { flight: `here ${flight}`, taster: `here ${tasterId}`, place },
    })),
  );
  const kitchens: Kitchen[] = [];
  const all: Said[] = here.flat();
  if (all.length > 0)
    kitchens.push({
      resultId: null,
      kitchen: null,
      receivedAt: null,
      slots: [],
      abv: null,
      restDays: null,
      ...byQuestion(all),
      notes: "",
    });
  const back = await records.list("passedFile", householdId, { where: { recipeId: id, way: "back" } });
  for (const { id: resultId, text, createdAt } of back) {
    const result = ResultFile.parse(JSON.parse(text ?? "{}"));
    const said = result.flights.flatMap(({ asked, sheets }, flight) =>
      sheets.map(({ taster, place, of, level }) => ({
        asked,
        placed: {
          flight: `${resultId} ${flight}`,
          taster: `${resultId} ${taster}`,
          place: { place, of, level },
        },
      })),
    );
    all.push(...said);
    kitchens.push({
      resultId,
      kitchen: result.kitchen ?? null,
      receivedAt: createdAt,
      slots: filledIn(result),
      abv: result.abv ?? null,
      restDays: result.restDays ?? null,
      ...byQuestion(said),
      notes: result.notes ?? "",
    });
  }
  return { kitchens, ...byQuestion(all) };
}

interface Said {
  readonly asked: "liked" | "close";
  readonly placed: Placed;
}

function byQuestion(said: readonly Said[]): Pick<Kitchen, "liked" | "close"> {
  const of = (asked: "liked" | "close") =>
    placesFound(
      said.filter((one) => one.asked === asked).map(({ placed }) => placed),
      asked,
    );
  return { liked: of("liked"), close: of("close") };
}

/** What stood in the slots of a result, by name as far as it is told. */
export const filledIn = ({ slots }: ResultFile): Kitchen["slots"] =>
  slots.map(({ slot, parts, whiskey }) => ({
    slot,
    parts,
    label: whiskey === undefined ? null : namedLabel(whiskey),
  }));
