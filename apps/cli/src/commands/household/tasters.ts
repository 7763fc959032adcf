import { everyItem, findTaster } from "../../door/index.ts";
import { needed, readText } from "../../flags/index.ts";
import { printTasters } from "../../print/household.ts";
import { householdCommand } from "../command.ts";

export const tasterList = householdCommand({
  name: "taster list",
  says: "Who tastes here.",
  flags: {},
  example: "taster list",
  run: async (_given, { client, household }) => {
    const items = await everyItem(client, "listTasters", { household: household.id });
    return { json: { items, next: null }, text: () => printTasters(items) };
  },
});

export const tasterAdd = householdCommand({
  name: "taster add",
  says: "Add a taster.",
  args: { name: "what the taster is called" },
  flags: {},
  example: "taster add Ilka",
  run: async ({ args }, { client, household }) => {
    const taster = await client("addTaster", { at: { household: household.id }, body: { name: args.name } });
    return { json: taster, text: () => printTasters([taster]) };
  },
});

export const tasterRename = householdCommand({
  name: "taster rename",
  says: "Give a taster another name.",
  args: { taster: "id or name" },
  flags: { name: needed(readText("name"), "<name>", "the new one") },
  example: "taster rename Ilka --name Ylka",
  run: async ({ args, flags }, here) => {
    const { id, version } = await findTaster(here, args.taster, ["taster"]);
    const at = { household: here.household.id, taster: id };
    const taster = await here.client("editTaster", { at, body: { version, name: flags.name } });
    return { json: taster, text: () => printTasters([taster]) };
  },
});
