import { everyItem, findFlight } from "../../door/index.ts";
import { some, readMark, yes } from "../../flags/index.ts";
import { printFinding, printFindings } from "../../print/finding.ts";
import { printFlight } from "../../print/flight.ts";
import { householdCommand } from "../command.ts";
import { tokenFlag, withToken } from "./token-flag.ts";

export const flightUndersides = householdCommand({
  name: "flight undersides",
  says: "Alone, after the lock: which mark was found under the glass at which place.",
  args: { flight: "id or name" },
  flags: {
    mark: some(readMark, "<place>=<mark>", "again for each glass: 1=C"),
    ...tokenFlag("the taster's"),
  },
  example: 'flight undersides "Alone on Tuesday" --mark 1=C --mark 2=A --mark 3=B',
  places: { marks: "mark" },
  run: async ({ args, flags }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const flight = await here.client("enterUndersides", {
      at: { household: here.household.id, flight: id },
      body: { marks: flags.mark.map(([place, mark]) => ({ place, mark })) },
      ...withToken(flags.token),
    });
    return { json: flight, text: () => printFlight(flight) };
  },
});

export const flightReveal = householdCommand({
  name: "flight reveal",
  says: "The one reveal: opens the key, posts what was poured, and says what came of it.",
  args: { flight: "id or name" },
  flags: {
    "close-open-sheets": yes("leave out the sheets that are not locked; needs the host's token"),
    ...tokenFlag("the host's, only to close open sheets"),
  },
  example: 'flight reveal "Sunday, blind"',
  places: { closeOpenSheets: "close-open-sheets" },
  run: async ({ args, flags }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const finding = await here.client("revealFlight", {
      at: { household: here.household.id, flight: id },
      body: { closeOpenSheets: flags["close-open-sheets"] },
      ...withToken(flags.token),
    });
    return { json: finding, text: () => printFinding(finding) };
  },
});

export const flightFinding = householdCommand({
  name: "flight finding",
  says: "What the glasses said, after the reveal.",
  args: { flight: "id or name" },
  flags: {},
  example: 'flight finding "Sunday, blind"',
  run: async ({ args }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const finding = await here.client("getFinding", { at: { household: here.household.id, flight: id } });
    return { json: finding, text: () => printFinding(finding) };
  },
});

export const findingsList = householdCommand({
  name: "findings list",
  says: "What all the flights said, newest first.",
  flags: {},
  example: "findings list",
  run: async (_given, { client, household }) => {
    const items = await everyItem(client, "listFindings", { household: household.id });
    return { json: { items, next: null }, text: () => printFindings(items) };
  },
});
