import { parseRule } from "@partsproof/core/slots";
import type { BodyRead, SlotOf } from "../../protocol/index.ts";
import type { Records } from "../ports.ts";
import { partsAllZero, refuse, unknownId } from "../refuse.ts";

type Body = Omit<BodyRead<"addRecipeVersion">, "version">;

/** R1: parts, slots and water that can be a recipe, of whiskeys and batches that this household knows. */
export async function checkRecipeBody(records: Records, householdId: string, body: Body): Promise<void> {
  if (body.slots.every(({ parts }) => parts === 0)) partsAllZero(["slots"]);
  checkRules(body.slots);
  const seen = new Set<string>();
  for (const [i, { of }] of body.slots.entries()) {
    if (of.kind === "open") continue;
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

type Kept = Exclude<SlotOf, { kind: "open" }>;
const slotKey = (of: Kept): string => `${of.kind}:${of.kind === "whiskey" ? of.whiskeyId : of.batchId}`;

/** X9: an open slot says what may stand in it, and a rule looks at other slots of this recipe only. */
function checkRules(slots: Body["slots"]): void {
  for (const [i, { of, rule, from }] of slots.entries()) {
    if (of.kind === "open" && of.named === null && rule === undefined)
      refuse(422, {
        code: "slot_open_without_rule",
        path: ["slots", i, "rule"],
        limit: "a rule, or a whiskey that is named",
        received: null,
        message: `slot ${i + 1} requires a rule or a named whiskey where it is open, got neither`,
      });
    const parsed = parseRule(rule ?? "anything");
    for (const condition of parsed.ok ? parsed.rule : [])
      if (condition.about === "same" && (condition.slot === i + 1 || condition.slot > slots.length))
        refuse(422, {
          code: "rule_slot_unknown",
          path: ["slots", i, "rule"],
          limit: `another slot of ${slots.length}`,
          received: condition.slot,
          message: `the rule of slot ${i + 1} requires another slot of ${slots.length} to be compared with, got slot ${condition.slot}`,
        });
    if (from !== undefined && slots.findIndex((other) => other.from === from) < i)
      refuse(422, {
        code: "slot_from_twice",
        path: ["slots", i, "from"],
        limit: "each slot of the file once",
        received: from,
        message: `slots requires each slot of the file it came with once, got ${from} twice`,
      });
  }
}
