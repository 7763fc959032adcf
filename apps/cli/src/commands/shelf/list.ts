import { VesselKind } from "@partsproof/house/protocol";
import { everyItem } from "../../door/index.ts";
import { one, readWord } from "../../flags/index.ts";
import { printVessels } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";

export const shelfList = householdCommand({
  name: "shelf list",
  says: "Bottles and other vessels with what they hold.",
  flags: {
    kind: one(readWord("kind", VesselKind.options), "<kind>", `only ${VesselKind.options.join(", ")}`),
  },
  example: "shelf list",
  run: async ({ flags }, { client, household }) => {
    const query = flags.kind === undefined ? {} : { kind: flags.kind };
    const items = await everyItem(client, "listVessels", { household: household.id }, query);
    return { json: { items, next: null }, text: () => printVessels(items) };
  },
});
