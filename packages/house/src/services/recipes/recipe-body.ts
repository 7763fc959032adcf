import type { BodyRead, SlotOf } from "../../protocol/index.ts";
import type { Records } from "../ports.ts";
import { partsAllZero, refuse, unknownId } from "../refuse.ts";

type Body = Omit<BodyRead<"addRecipeVersion">, "version">;

/** R1: parts, slots and water that can be a recipe, of whiskeys and batches that this household knows. */
export async function checkRecipeBody(records: Records, householdId: string, body: Body): Promise<void> {
  if (body.slots.every(({ parts }) => parts === 0)) partsAllZero(["slots"]);
  const seen = new Set<string>();
  for (const [i, { of }] of body.slots.entries()) {
    const path = ["slots", i, "of", of.kind === "whiskey" ? "whiskeyId" : "batchId"];
    const id = of.kind === "whiskey" ? of.whiskeyId : of.batchId;
    if (!(await records.find(of.kind, householdId, id))) unknownId(of.kind, id, path);
    if (seen.has(slotKey(of))) {
      refuse(422, {
        code: "slot_repeated",
        path,
        limit: `each ${of.kind} in one slot`,
        received: id,
        message: `slots requires each ${of.kind} once, got ${id} twice`,
      });
    }
    seen.add(slotKey(of));
  }
  if (body.waterTo?.value === 0) {
    refuse(422, {
      code: "water_to_zero",
      path: ["waterTo", "value"],
      limit: "more than 0",
      received: 0,
      message: "water to a strength requires more than 0, got 0: no amount of water gets there",
    });
  }
}

const slotKey = (of: SlotOf): string => `${of.kind}:${of.kind === "whiskey" ? of.whiskeyId : of.batchId}`;
