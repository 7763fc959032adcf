import { printNext } from "../../print/household.ts";
import { householdCommand } from "../command.ts";

export const next = householdCommand({
  name: "next",
  says: "What is next: what has rested, which sheets are open, which flights wait.",
  flags: {},
  example: "next",
  run: async (_given, { client, household }) => {
    const answer = await client("next", { at: { household: household.id } });
    return { json: answer, text: () => printNext(answer.items) };
  },
});
