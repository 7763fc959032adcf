import { VesselKind } from "@partsproof/house/protocol";
import { needed, readText, readVolume, readWord } from "../../flags/index.ts";
import { printVessel } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";

const kinds = VesselKind.exclude(["bottle"]).options;

export const shelfAddVessel = householdCommand({
  name: "shelf add-vessel",
  says: "An empty vessel: a blending bottle, a vial or a jug.",
  flags: {
    kind: needed(readWord("kind", kinds), "<kind>", kinds.join(", ")),
    label: needed(readText("label"), "<label>", "what to call it"),
    capacity: needed(readVolume, "<volume>", "what it holds at most"),
  },
  example: 'shelf add-vessel --kind jug --label "Glass jug" --capacity 1l',
  places: { capacityMl: "capacity" },
  run: async ({ flags }, { client, household }) => {
    const { kind, label, capacity } = flags;
    const vessel = await client("addVessel", {
      at: { household: household.id },
      body: { kind, label, capacityMl: capacity },
    });
    return { json: vessel, text: () => printVessel(vessel, null, household.currency) };
  },
});
