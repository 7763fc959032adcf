import type { House, Reads } from "../ports.ts";
import { Remembered } from "../remembered.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";
import { type FlightEvidence, flightEvidence } from "./flight-evidence.ts";

/** What is revealed never changes and ids are never given twice, so a flight is read once. */
const read = new WeakMap<House, Remembered<FlightEvidence>>();
/** Beyond so many flights not read before, all sheets are fetched at once. */
const FEW = 12;

const opened = (key: { readonly opened: FlightKey | null } | undefined, flight: FlightRow): FlightKey => {
  if (!key?.opened)
    throw new Error(`a revealed flight requires its opened key, flight ${flight.id} has none`);
  return key.opened;
};

/**
 * W1: the household's revealed flights, oldest first, with their locked sheets. The one way to evidence: a flight that is not
 * revealed is not asked for.
 */
export async function revealedEvidence(
  house: House,
  records: Reads,
  household: string,
  only?: string,
): Promise<readonly FlightEvidence[]> {
  const revealed = await records.list("flight", household, { where: { state: "revealed" } });
  const flights = only === undefined ? revealed : revealed.filter(({ id }) => id === only);
  const known = read.get(house) ?? new Remembered<FlightEvidence>();
  read.set(house, known);
  const missing = flights.filter(({ id }) => known.get(id) === undefined);
  if (missing.length > FEW) {
    const keys = new Map((await records.list("flightKey", household)).map((key) => [key.flightId, key]));
    const sheets = Map.groupBy(await records.list("sheet", household), ({ flightId }) => flightId);
    for (const flight of missing) {
      const own: readonly SheetRow[] = sheets.get(flight.id) ?? [];
      known.set(flight.id, flightEvidence(flight, opened(keys.get(flight.id), flight), own));
    }
  } else {
    for (const flight of missing) {
      const where = { where: { flightId: flight.id } };
      const [key] = await records.list("flightKey", household, where);
      const own = await records.list("sheet", household, where);
      known.set(flight.id, flightEvidence(flight, opened(key, flight), own));
    }
  }
  return flights
    .flatMap(({ id }) => known.get(id) ?? [])
    .toSorted((a, b) => (a.revealedAt < b.revealedAt ? -1 : a.revealedAt > b.revealedAt ? 1 : 0));
}
