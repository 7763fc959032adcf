import { DAY_MS } from "@partsproof/core/quantity";
import type { Records } from "../ports.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { FlightKeyRow, FlightRow, SheetRow } from "../rows.ts";

/** After this long nobody's token is needed to end what its holder may have lost. */
export const aDayAfter = (since: string | null, now: Date): boolean =>
  since !== null && now.getTime() - Date.parse(since) >= DAY_MS;

/** The flight, or 404. */
export async function knownFlight(
  records: Records,
  at: Readonly<Record<string, string>> & { readonly household: string },
): Promise<FlightRow> {
  const id = at["flight"] ?? "";
  return (await records.find("flight", at.household, id)) ?? unknownId("flight", id, ["flight"]);
}

/** The sheet of this flight, or 404. */
export async function knownSheet(
  records: Records,
  flight: FlightRow,
  at: Readonly<Record<string, string>>,
): Promise<SheetRow> {
  const id = at["sheet"] ?? "";
  const sheet = await records.find("sheet", flight.householdId, id);
  return sheet?.flightId === flight.id ? sheet : unknownId("sheet", id, ["sheet"]);
}

export const sheetsOf = (records: Records, flight: FlightRow): Promise<readonly SheetRow[]> =>
  records.list("sheet", flight.householdId, { where: { flightId: flight.id } });

export async function keyRowOf(records: Records, flight: FlightRow): Promise<FlightKeyRow | null> {
  const [row] = await records.list("flightKey", flight.householdId, { where: { flightId: flight.id } });
  return row ?? null;
}

/** Writes a flight's next version; two at once cannot both have read the last one. */
export async function keepFlight(records: Records, flight: FlightRow): Promise<void> {
  if (!(await records.replace("flight", flight))) staleEdit("flight", flight.version - 1, flight.version);
}

/** The row as its next version. */
export const changed = <R extends { readonly version: number; readonly updatedAt: string }>(
  row: R,
  now: Date,
  fields: Partial<R>,
): R => ({ ...row, ...fields, version: row.version + 1, updatedAt: now.toISOString() });

const STATE_CODES: Readonly<Record<string, string>> = {
  pouring: "flight_not_poured",
  tasting: "flight_poured",
  revealed: "already_revealed",
  "called off": "flight_called_off",
};

/** 409 unless the flight is in the state that the act needs; the code says in which it is. */
export function needState(flight: FlightRow, act: string, wanted: string): void {
  if (flight.state === wanted) return;
  refuse(409, {
    code: STATE_CODES[flight.state] ?? "flight_state",
    path: ["flight"],
    limit: `a flight that is ${wanted}`,
    received: flight.state,
    message: `${act} requires a flight that is ${wanted}, got one that is ${flight.state}`,
  });
}
