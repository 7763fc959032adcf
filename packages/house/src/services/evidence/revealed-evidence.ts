import type { House, Reads } from "../ports.ts";
import { Remembered } from "../remembered.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";
import { readerFor } from "../notes/index.ts";
import { wordsOf } from "../words/index.ts";
import { type FlightEvidence, flightEvidence } from "./flight-evidence.ts";

/** A flight as it was read by these words. */
interface Read {
  readonly by: string;
  readonly evidence: FlightEvidence;
}

/** What is revealed never changes and ids are never given twice, so a flight is read once for the words of its household. */
const read = new WeakMap<House, Remembered<Read>>();
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
  const words = await wordsOf(records, household);
  const [reader, by] = [readerFor(words), JSON.stringify(words)];
  const known = read.get(house) ?? new Remembered<Read>();
  read.set(house, known);
  const missing = flights.filter(({ id }) => known.get(id)?.by !== by);
  const keep = (flight: FlightRow, key: FlightKey, sheets: readonly SheetRow[]): void =>
    known.set(flight.id, { by, evidence: flightEvidence(flight, key, sheets, reader) });
  if (missing.length > FEW) {
    const keys = new Map((await records.list("flightKey", household)).map((key) => [key.flightId, key]));
    const sheets = Map.groupBy(await records.list("sheet", household), ({ flightId }) => flightId);
    for (const flight of missing) {
      const own: readonly SheetRow[] = sheets.get(flight.id) ?? [];
      keep(flight, opened(keys.get(flight.id), flight), own);
    }
  } else {
    for (const flight of missing) {
      const where = { where: { flightId: flight.id } };
      const [key] = await records.list("flightKey", household, where);
      const own = await records.list("sheet", household, where);
      keep(flight, opened(key, flight), own);
    }
  }
  return flights
    .flatMap(({ id }) => known.get(id)?.evidence ?? [])
    .toSorted((a, b) => (a.revealedAt < b.revealedAt ? -1 : a.revealedAt > b.revealedAt ? 1 : 0));
}
