import { type AtHousehold, everyItem, whiskeyLabel } from "../../door/index.ts";

/** What the ids in slots are called. */
export async function slotLabels({ client, household }: AtHousehold): Promise<ReadonlyMap<string, string>> {
  const at = { household: household.id };
  const whiskeys = await everyItem(client, "listWhiskeys", at);
  const batches = await everyItem(client, "listBatches", at);
  return new Map([
    ...whiskeys.map((whiskey) => [whiskey.id, whiskeyLabel(whiskey)] as const),
    ...batches.map(({ id, name }) => [id, name] as const),
  ]);
}
