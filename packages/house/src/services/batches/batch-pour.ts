import { contentsOfVessel, TOLERANCE, volumeOf } from "@partsproof/core/ledger";
import type { BodyRead } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { House, Records } from "../ports.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { BatchRow, VesselRow } from "../rows.ts";
import { type Entry, liquidIn, post, refuseOverflow, type Shelf, shelfState } from "../shelf/index.ts";

/** R6: the batch's vessel, new or empty, with the batch's id on it. */
export async function vesselFor(
  records: Records,
  house: House,
  householdId: string,
  asked: BodyRead<"addBatch">["vessel"],
  batchId: string,
): Promise<VesselRow> {
  if (asked.kind === "new") {
    const row: VesselRow = {
      ...born(house, householdId),
      kind: "blending bottle",
      label: asked.label,
      capacityMl: asked.capacityMl,
      whiskeyId: null,
      batchId,
      priceMinor: null,
      openedAt: null,
    };
    await records.insert("vessel", row);
    return row;
  }
  const id = asked.vesselId;
  const old =
    (await records.find("vessel", householdId, id)) ?? unknownId("vessel", id, ["vessel", "vesselId"]);
  const { state } = await shelfState(records, householdId);
  const heldMl = volumeOf(contentsOfVessel(state, id));
  if (heldMl > 0) {
    refuse(409, {
      code: "vessel_not_empty",
      path: ["vessel", "vesselId"],
      limit: "an empty vessel",
      received: heldMl,
      message: `a batch requires an empty vessel, got ${old.label} with ${heldMl.toFixed(1)} mL in it`,
    });
  }
  const row: VesselRow = { ...edited(house, "vessel", old, old.version), batchId };
  if (!(await records.replace("vessel", row))) staleEdit("vessel", old.version, row.version);
  return row;
}

/** Posts the pours, and measures the whole against the vessel, so that a batch too big is told with its full volume. */
export async function pour(
  records: Records,
  house: House,
  batch: BatchRow,
  vessel: VesselRow,
  pours: BodyRead<"addBatch">["pours"],
): Promise<void> {
  const shelf = await shelfState(records, batch.householdId);
  const entries: Entry[] = [];
  for (const [i, { from, amount }] of pours.entries()) {
    if (from.kind === "vessel" && !shelf.vessels.has(from.vesselId))
      unknownId("vessel", from.vesselId, ["pours", i, "from", "vesselId"]);
    entries.push({
      from: from.kind === "vessel" ? from : { kind: "outside", name: "tap" },
      to: { kind: "vessel", vesselId: vessel.id },
      amount,
      liquid: from.kind === "vessel" ? null : liquidIn(null, amount, 0),
      batchId: batch.id,
      path: ["pours", i, from.kind === "vessel" && from.vesselId === vessel.id ? "from" : "amount"],
    });
  }
  const roomy: Shelf = {
    ...shelf,
    state: {
      ...shelf.state,
      vessels: new Map(shelf.state.vessels).set(vessel.id, { id: vessel.id, capacityMl: Number.MAX_VALUE }),
    },
  };
  const after = await post(records, house, batch.householdId, entries, { shelf: roomy });
  const finalMl = volumeOf(contentsOfVessel(after.shelf.state, vessel.id));
  if (finalMl > vessel.capacityMl * (1 + TOLERANCE)) refuseOverflow(vessel, finalMl, ["vessel"]);
}
