import { everyItem } from "../../door/index.ts";
import { issueAt, refuse } from "../../flags/index.ts";
import { printHousehold } from "../../print/household.ts";
import { houseCommand } from "../command.ts";

export const demoLoad = houseCommand({
  name: "demo load",
  says: "Load the invented household of Saltreach, to try things on.",
  flags: {},
  example: "demo load",
  run: async (_given, { client, says }) => {
    const household = await client("loadDemo");
    return { json: household, text: () => printHousehold(household), notes: [`Loaded into ${says}.`] };
  },
});

export const demoRemove = houseCommand({
  name: "demo remove",
  says: "Remove the invented household again.",
  flags: {},
  example: "demo remove",
  run: async (_given, { client }) => {
    const demos = (await everyItem(client, "listHouseholds")).filter(({ demo }) => demo);
    const [only] = demos;
    if (only === undefined) refuse(issueAt([], "no_demo", "a demo household that was loaded", null));
    if (demos.length > 1) {
      const list = demos.map(({ name, id }) => `${name} (${id})`).join(", ");
      refuse(issueAt([], "ambiguous_demo", `one demo household; remove by id: ${list}`, demos.length));
    }
    const { id, name } = only;
    await client("removeHousehold", { at: { household: id }, query: { confirm: name } });
    return { json: { removed: { id, name } }, text: () => `Removed ${name}.` };
  },
});
