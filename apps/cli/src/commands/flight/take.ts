import { issueAt, refuse, yes } from "../../flags/index.ts";
import { careful, printFlight, printSheet } from "../../print/flight.ts";
import { householdCommand } from "../command.ts";
import { tokenFlag, withToken } from "./token-flag.ts";
import { tasterFlag, whichSheet } from "./which-sheet.ts";

export const flightTake = householdCommand({
  name: "flight take",
  says: "Take a sheet that is free. Prints its token, this once.",
  args: { flight: "id or name" },
  flags: { ...tasterFlag, "of-legal-age": yes("the taster says to be of legal drinking age") },
  example: 'flight take "Sunday, blind" --taster Ilka --of-legal-age',
  run: async ({ args, flags }, here) => {
    if (!flags["of-legal-age"]) {
      refuse(
        issueAt(["of-legal-age"], "legal_age_needed", "the taster's word to be of legal drinking age", null),
      );
    }
    const { at } = await whichSheet(here, args.flight, flags.taster);
    const taken = await here.client("takeSheet", { at, body: { ofLegalAge: true } });
    const text = (): string =>
      `${printSheet(taken.sheet)}\n\nThis token is shown this once; only the host can free the sheet again.\n${taken.sheet.taster}'s token  ${taken.token}`;
    return { json: taken, text, notes: [careful] };
  },
});

export const flightFree = householdCommand({
  name: "flight free",
  says: "Revoke the token of a sheet that is not locked, so that it can be taken again. What is on it stays.",
  args: { flight: "id or name" },
  flags: { ...tasterFlag, ...tokenFlag("the host's") },
  example: 'flight free "Sunday, blind" --taster Ilka',
  run: async ({ args, flags }, here) => {
    const { at } = await whichSheet(here, args.flight, flags.taster);
    const flight = await here.client("freeSheet", { at, ...withToken(flags.token) });
    return { json: flight, text: () => printFlight(flight) };
  },
});
