import { chooseHousehold } from "../../door/index.ts";
import { printHousehold } from "../../print/household.ts";
import { houseCommand } from "../command.ts";

export const householdShow = houseCommand({
  name: "household show",
  says: "One household.",
  maybe: { household: "id or name; not needed where there is only one" },
  flags: {},
  example: 'household show "Kitchen table"',
  run: async ({ args }, { client }) => {
    const household = await chooseHousehold(client, args.household);
    return { json: household, text: () => printHousehold(household) };
  },
});
