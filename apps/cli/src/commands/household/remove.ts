import { chooseHousehold } from "../../door/index.ts";
import { needed, readText } from "../../flags/index.ts";
import { houseCommand } from "../command.ts";

export const householdRemove = houseCommand({
  name: "household remove",
  says: "Remove a household and all it holds. There is no undo: export it first.",
  maybe: { household: "id or name; not needed where there is only one" },
  flags: { confirm: needed(readText("confirm"), "<name>", "its whole name, to be sure") },
  example: 'household remove "Kitchen table" --confirm "Kitchen table"',
  run: async ({ args, flags }, { client }) => {
    const { id, name } = await chooseHousehold(client, args.household);
    await client("removeHousehold", { at: { household: id }, query: { confirm: flags.confirm } });
    return { json: { removed: { id, name } }, text: () => `Removed ${name}.` };
  },
});
