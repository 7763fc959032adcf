import type { BodyOf } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { one, readText } from "../../flags/index.ts";
import { printNext } from "../../print/household.ts";
import { printNextFlight } from "../../print/next-flight.ts";
import { fileCommand } from "../command.ts";

export const next = fileCommand({
  name: "next",
  says: "What is next: what has rested, open sheets, flights that wait. With a file, what to pour next and why.",
  flags: {
    file: one(readText("file"), "<file>", "what was tried and how it was ranked, as JSON: docs/next.md"),
  },
  example: "next --file saltreach-history.json",
  run: async ({ file }, { client, at }) => {
    if (file !== undefined) {
      // Not read by us: the house's schema says what is wrong with it, field by field.
      const body = (await readJsonFile(file, ["file"])) as NonNullable<BodyOf<"nextFlight">>;
      const flight = await client("nextFlight", { body });
      return { json: flight, text: () => printNextFlight(flight) };
    }
    const here = await at();
    const answer = await here.client("next", { at: { household: here.household.id } });
    return { json: answer, text: () => printNext(answer.items) };
  },
});
