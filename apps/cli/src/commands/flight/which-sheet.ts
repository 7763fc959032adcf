import type { Flight } from "@partsproof/house/protocol";
import { type AtHousehold, findFlight, findSheet } from "../../door/index.ts";
import { one, readText } from "../../flags/index.ts";

export const tasterFlag = {
  taster: one(readText("taster"), "<taster>", "whose sheet: id or name; not needed where there is only one"),
};

export interface WhichSheet {
  readonly flight: Flight;
  readonly at: { readonly household: string; readonly flight: string; readonly sheet: string };
}

export async function whichSheet(
  here: AtHousehold,
  flightText: string,
  taster: string | undefined,
): Promise<WhichSheet> {
  const flight = await findFlight(here, flightText, ["flight"]);
  const { sheetId } = findSheet(flight, taster, ["taster"]);
  return { flight, at: { household: here.household.id, flight: flight.id, sheet: sheetId } };
}
