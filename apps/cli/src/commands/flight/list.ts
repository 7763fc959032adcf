import { everyItem, findFlight } from "../../door/index.ts";
import { printFlight, printFlights } from "../../print/flight.ts";
import { householdCommand } from "../command.ts";

export const flightList = householdCommand({
  name: "flight list",
  says: "Flights, newest first.",
  flags: {},
  example: "flight list",
  run: async (_given, { client, household }) => {
    const items = await everyItem(client, "listFlights", { household: household.id });
    return { json: { items, next: null }, text: () => printFlights(items) };
  },
});

export const flightShow = householdCommand({
  name: "flight show",
  says: "A flight, with nothing given away.",
  args: { flight: "id or name" },
  flags: {},
  example: 'flight show "Sunday, blind"',
  run: async ({ args }, here) => {
    const flight = await findFlight(here, args.flight, ["flight"]);
    return { json: flight, text: () => printFlight(flight) };
  },
});
