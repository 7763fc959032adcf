import { findVessel } from "../../door/index.ts";
import { printVessel } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";

export const shelfShow = householdCommand({
  name: "shelf show",
  says: "One vessel: what it holds, of what, at what strength, age and cost.",
  args: { vessel: "id or label" },
  flags: {},
  example: 'shelf show "Saltreach Lamplighter\'s Rest"',
  run: async ({ args }, here) => {
    const { client, household } = here;
    const vessel = await findVessel(here, args.vessel, ["vessel"]);
    const whiskey =
      vessel.whiskeyId === null
        ? null
        : await client("getWhiskey", { at: { household: household.id, whiskey: vessel.whiskeyId } });
    return { json: vessel, text: () => printVessel(vessel, whiskey, household.currency) };
  },
});
