import { type FlightEvidence, revealedEvidence } from "../evidence/index.ts";
import type { House, Reads } from "../ports.ts";
import { type FlightPlaces, placesOf } from "./places-of.ts";

/** What this household's own revealed flights say of a recipe, all its batches taken together. */
export async function ownPlaces(
  house: House,
  records: Reads,
  household: string,
  recipeId: string,
): Promise<readonly FlightPlaces[]> {
  const batches = await records.list("batch", household, { where: { recipeId } });
  const ours = new Set(batches.map(({ id }) => `batch:${id}`));
  const flights: readonly FlightEvidence[] =
    ours.size === 0 ? [] : await revealedEvidence(house, records, household);
  return placesOf(flights, (nameId) => ours.has(nameId));
}
