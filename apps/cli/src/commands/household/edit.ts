import { chooseHousehold } from "../../door/index.ts";
import { issueAt, one, readText, refuse } from "../../flags/index.ts";
import { printHousehold } from "../../print/household.ts";
import { houseCommand } from "../command.ts";
import { readCurrency } from "./read-currency.ts";

export const householdEdit = houseCommand({
  name: "household edit",
  says: "Another name or currency. Prices keep their figures: no rate is known here.",
  maybe: { household: "id or name; not needed where there is only one" },
  flags: {
    name: one(readText("name"), "<name>", "what it is called from now on"),
    currency: one(readCurrency, "<code>", "three letters of ISO 4217"),
  },
  example: 'household edit "Kitchen table" --name "Long table"',
  run: async ({ args, flags }, { client }) => {
    const { name, currency } = flags;
    if (name === undefined && currency === undefined)
      refuse(issueAt([], "flag_missing", "one of --name and --currency", null));
    const { id, version } = await chooseHousehold(client, args.household);
    const household = await client("editHousehold", {
      at: { household: id },
      body: {
        version,
        ...(name === undefined ? {} : { name }),
        ...(currency === undefined ? {} : { currency }),
      },
    });
    return { json: household, text: () => printHousehold(household) };
  },
});
