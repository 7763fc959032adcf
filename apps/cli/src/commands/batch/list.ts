import { everyItem, findBatch } from "../../door/index.ts";
import { printBatch, printBatches } from "../../print/batch.ts";
import { householdCommand } from "../command.ts";

export const batchList = householdCommand({
  name: "batch list",
  says: "Batches, newest first.",
  flags: {},
  example: "batch list",
  run: async (_given, { client, household }) => {
    const items = await everyItem(client, "listBatches", { household: household.id });
    return { json: { items, next: null }, text: () => printBatches(items) };
  },
});

export const batchShow = householdCommand({
  name: "batch show",
  says: "One batch: what was poured, how long it rests, what is left.",
  args: { batch: "id or name" },
  flags: {},
  example: 'batch show "First try"',
  run: async ({ args }, here) => {
    const batch = await findBatch(here, args.batch, ["batch"]);
    return { json: batch, text: () => printBatch(batch, here.household.currency) };
  },
});
