import { one } from "../../flags/index.ts";
import { printHousehold } from "../../print/household.ts";
import { houseCommand } from "../command.ts";
import { readCurrency } from "./read-currency.ts";

export const householdAdd = houseCommand({
  name: "household add",
  says: "Begin a household.",
  args: { name: "what it is called" },
  flags: { currency: one(readCurrency, "<code>", "three letters of ISO 4217; else USD") },
  example: 'household add "Kitchen table" --currency EUR',
  run: async ({ args, flags }, { client }) => {
    const body =
      flags.currency === undefined ? { name: args.name } : { name: args.name, currency: flags.currency };
    const household = await client("addHousehold", { body });
    return { json: household, text: () => printHousehold(household) };
  },
});
