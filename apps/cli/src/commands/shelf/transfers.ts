import { everyItem, findTransfer, findVessel } from "../../door/index.ts";
import { one, readText } from "../../flags/index.ts";
import { printTransfers } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";
import { vesselLabels } from "./pour.ts";

export const shelfTransfers = householdCommand({
  name: "shelf transfers",
  says: "Everything that was moved, newest first.",
  flags: { vessel: one(readText("vessel"), "<vessel>", "only in and out of this one: id or label") },
  example: "shelf transfers",
  run: async ({ flags }, here) => {
    const vessel = flags.vessel === undefined ? null : await findVessel(here, flags.vessel, ["vessel"]);
    const query = vessel === null ? {} : { vesselId: vessel.id };
    const items = await everyItem(here.client, "listTransfers", { household: here.household.id }, query);
    const labels = await vesselLabels(here);
    return { json: { items, next: null }, text: () => printTransfers(items, labels) };
  },
});

export const shelfUndo = householdCommand({
  name: "shelf undo",
  says: "Undo a transfer, if what followed still stands without it.",
  args: { transfer: "its id, or a beginning of it that no other has" },
  flags: {},
  example: "shelf undo 01jz0c9v7k3m",
  run: async ({ args }, here) => {
    const { id } = await findTransfer(here, args.transfer, ["transfer"]);
    const at = { household: here.household.id, transfer: id };
    const transfer = await here.client("undoTransfer", { at });
    const labels = await vesselLabels(here);
    return { json: transfer, text: () => printTransfers([transfer], labels) };
  },
});
