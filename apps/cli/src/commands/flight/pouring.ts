import { findFlight } from "../../door/index.ts";
import { printFlight, printPourList } from "../../print/flight.ts";
import { householdCommand } from "../command.ts";
import { tokenFlag, withToken } from "./token-flag.ts";

export const flightPourList = householdCommand({
  name: "flight pour-list",
  says: "For the pourer: what goes into which coded glass. No taster may see it.",
  args: { flight: "id or name" },
  flags: tokenFlag("the pourer's"),
  example: 'flight pour-list "Sunday, blind"',
  run: async ({ args, flags }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const at = { household: here.household.id, flight: id };
    const list = await here.client("getPourList", { at, ...withToken(flags.token) });
    return { json: list, text: () => printPourList(list) };
  },
});

export const flightPoured = householdCommand({
  name: "flight poured",
  says: "The glasses stand ready: tasting begins.",
  args: { flight: "id or name" },
  flags: tokenFlag("the pourer's, or the taster's when alone"),
  example: 'flight poured "Sunday, blind"',
  run: async ({ args, flags }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const at = { household: here.household.id, flight: id };
    const flight = await here.client("markPoured", { at, ...withToken(flags.token) });
    return { json: flight, text: () => printFlight(flight) };
  },
});

export const flightCallOff = householdCommand({
  name: "flight call-off",
  says: "Nothing was poured: destroy the key and free what was kept for it.",
  args: { flight: "id or name" },
  flags: tokenFlag("the host's"),
  example: 'flight call-off "Sunday, blind"',
  run: async ({ args, flags }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const at = { household: here.household.id, flight: id };
    const flight = await here.client("callOffFlight", { at, ...withToken(flags.token) });
    return { json: flight, text: () => printFlight(flight) };
  },
});
