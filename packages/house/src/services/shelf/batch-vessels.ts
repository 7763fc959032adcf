import { applyTransfer, contentsOfVessel, emptyState } from "@partsproof/core/ledger";
import type { Records } from "../ports.ts";
import { staleEdit } from "../refuse.ts";
import type { TransferRow } from "../rows.ts";
import { coreTransfer, type Shelf } from "./shelf.ts";

/** Sets `batchId` of each vessel anew from the transfers that stay: the batch poured into it since it was last empty. */
export async function setBatches(
  records: Records,
  shelf: Shelf,
  staying: readonly TransferRow[],
  now: string,
): Promise<void> {
  const resting = batchesIn(shelf, staying);
  for (const vessel of shelf.vessels.values()) {
    const batchId = resting.get(vessel.id) ?? null;
    if (batchId === vessel.batchId) continue;
    const row = { ...vessel, batchId, version: vessel.version + 1, updatedAt: now };
    if (!(await records.replace("vessel", row))) staleEdit("vessel", vessel.version, row.version);
  }
}

function batchesIn(shelf: Shelf, transfers: readonly TransferRow[]): ReadonlyMap<string, string | null> {
  const resting = new Map<string, string | null>();
  let state = emptyState(shelf.vessels.values());
  for (const row of transfers) {
    if (row.undoneAt !== null) continue;
    if (row.to.kind === "vessel") {
      const { vesselId } = row.to;
      if (row.batchId !== null) resting.set(vesselId, row.batchId);
      else if (contentsOfVessel(state, vesselId).size === 0) resting.set(vesselId, null);
    }
    const moved = applyTransfer(state, coreTransfer(row));
    if (!moved.ok) throw new Error(`ledger of ${shelf.householdId} does not fold: ${moved.refusal.message}`);
    state = moved.state;
  }
  return resting;
}
