import {
  applyTransfer,
  type Contents as Held,
  contentsOfVessel,
  emptyState,
  massesOf,
  volumeOf,
} from "@partsproof/core/ledger";
import type { Batch } from "../../protocol/index.ts";
import type { BatchRow } from "../rows.ts";
import { coreTransfer, type Shelf } from "./shelf.ts";
import { waterMl } from "./mixture.ts";

/** A batch as it was made. */
export interface BatchPast {
  readonly poured: Batch["poured"];
  /** What its vessel held after its last pour. */
  readonly made: Held;
}

export const NO_PAST: BatchPast = { poured: [], made: new Map() };

/** Walks the ledger once and keeps what each batch was poured from, in millilitres and grams of that moment. */
export function batchPasts(shelf: Shelf): ReadonlyMap<string, BatchPast> {
  const pasts = new Map<string, BatchPast>();
  if (shelf.batches.size === 0) return pasts;
  let state = emptyState(shelf.vessels.values());
  for (const row of shelf.transfers) {
    if (row.undoneAt !== null) continue;
    const moved = applyTransfer(state, coreTransfer(row));
    if (!moved.ok) throw new Error(`ledger of ${shelf.householdId} does not fold: ${moved.refusal.message}`);
    if (row.batchId !== null && row.to.kind === "vessel") {
      const { from } = row;
      const was = from.kind === "vessel" ? contentsOfVessel(state, from.vesselId) : null;
      const left = from.kind === "vessel" ? contentsOfVessel(moved.state, from.vesselId) : null;
      const g = row.liquid ? row.liquid.ethanolG + row.liquid.waterG : massOf(was) - massOf(left);
      const ml = was && left ? volumeOf(was) - volumeOf(left) : waterMl(g);
      const label = from.kind === "vessel" ? (shelf.vessels.get(from.vesselId)?.label ?? "") : "water";
      const { poured } = pasts.get(row.batchId) ?? NO_PAST;
      pasts.set(row.batchId, {
        poured: [...poured, { transferId: row.id, label, ml, g }],
        made: contentsOfVessel(moved.state, row.to.vesselId),
      });
    }
    state = moved.state;
  }
  return pasts;
}

/** What is left of a batch in its vessel; nothing once the vessel was emptied and filled with something else. */
export function batchNow(shelf: Shelf, { id, vesselId }: BatchRow): Held {
  return shelf.vessels.get(vesselId)?.batchId === id ? contentsOfVessel(shelf.state, vesselId) : new Map();
}

function massOf(held: Held | null): number {
  if (held === null) return 0;
  const { ethanolG, waterG } = massesOf(held);
  return ethanolG + waterG;
}
