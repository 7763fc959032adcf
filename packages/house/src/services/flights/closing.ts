import { entriesOfFlight } from "./entries.ts";
import { aDayAfter, changed, keepFlight, knownFlight, needState, sheetsOf } from "./flight-rows.ts";
import type { Handlers } from "../handler.ts";
import { happened } from "../live/index.ts";
import type { House, Records } from "../ports.ts";
import { staleEdit } from "../refuse.ts";
import type { FlightRow, SheetRow } from "../rows.ts";
import { closingOf } from "./promise.ts";
import { showFlight } from "./shown-flight.ts";
import { needToken } from "./tokens.ts";
import { trail } from "../trail/index.ts";

export const isShut = ({ state }: SheetRow): boolean => state === "locked" || state === "closed";

/** P3: the flight with its closing, once its last sheet is shut; as it is before that. */
export async function closedOver(
  records: Records,
  house: House,
  flight: FlightRow,
  sheets: readonly SheetRow[],
): Promise<FlightRow> {
  if (flight.closing !== null || !sheets.every(isShut)) return flight;
  const now = house.clock.now();
  const closing = await closingOf(house, flight, sheets, await entriesOfFlight(records, flight), now);
  const closed = changed(flight, now, { closing });
  await keepFlight(records, closed);
  await happened(records, house, flight, "closed");
  return closed;
}

/** F11: every sheet that is not locked, shut for good. */
export async function shutSheets(
  records: Records,
  house: House,
  flight: FlightRow,
  sheets: readonly SheetRow[],
): Promise<SheetRow[]> {
  const shut: SheetRow[] = [];
  for (const sheet of sheets) {
    const closed = isShut(sheet) ? sheet : changed(sheet, house.clock.now(), { state: "closed" });
    if (closed !== sheet && !(await records.replace("sheet", closed))) {
      staleEdit("sheet", sheet.version, closed.version);
    }
    if (closed !== sheet) await happened(records, house, flight, "closed", { sheetId: sheet.id });
    shut.push(closed);
  }
  return shut;
}

export const closingHandlers: Handlers<"closeFlight"> = {
  /** F11, P3: so that every phone holds the closing before the key is opened. */
  closeFlight: ({ house, at, token, caller }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      if (!aDayAfter(flight.pouredAt, house.clock.now())) await needToken(token, flight.hostTokenHash);
      needState(flight, "closing a flight", "tasting");
      const shut = await shutSheets(records, house, flight, await sheetsOf(records, flight));
      const closed = await closedOver(records, house, flight, shut);
      await trail(records, house, "flight closed", { caller, household: at.household, flight: flight.id });
      return showFlight(records, closed);
    }),
};
