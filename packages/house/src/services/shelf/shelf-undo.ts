import { contentsOfVessel, foldLedger, type LedgerState, TOLERANCE, volumeOf } from "@partsproof/core/ledger";
import { setBatches } from "./batch-vessels.ts";
import type { House, Records } from "../ports.ts";
import { refuse, staleEdit } from "../refuse.ts";
import type { TransferRow } from "../rows.ts";
import { coreTransfer, type Shelf, shelfState } from "./shelf.ts";
import { keptMl } from "./shelf-kept.ts";
import { refuseKept } from "./shelf-refusal.ts";
import { usesOfBatch } from "./uses.ts";

/**
 * Undoes a transfer, with all of its batch if it has one (S6): refused if what followed would not stand, or if
 * what sealed flights keep would not be there. An undone batch is gone from the batches; its transfers stay on
 * the page as undone, with its name in their note.
 */
export async function undo(
  records: Records,
  house: Pick<House, "clock">,
  asked: TransferRow,
): Promise<TransferRow> {
  const { householdId } = asked;
  checkUndoable(asked);
  const shelf = await shelfState(records, householdId);
  const batch = asked.batchId === null ? undefined : shelf.batches.get(asked.batchId);
  if (batch) await checkBatchFree(records, householdId, batch.id, batch.name);
  const going = shelf.transfers.filter(
    (t) =>
      t.undoneAt === null && (t.id === asked.id || (asked.batchId !== null && t.batchId === asked.batchId)),
  );
  const gone = new Set(going.map(({ id }) => id));
  const staying = shelf.transfers.filter((t) => !gone.has(t.id));
  const folded = foldLedger(shelf.vessels.values(), staying.map(coreTransfer));
  if (!folded.ok) refuseBroken(shelf, asked, folded.refusal);
  checkKept(shelf, folded.state, going);

  const now = house.clock.now().toISOString();
  const note = (old: string) => (batch ? `${old === "" ? "" : `${old} · `}batch ${batch.name}, undone` : old);
  const undone = going.map((t) => ({
    ...t,
    version: t.version + 1,
    updatedAt: now,
    undoneAt: now,
    batchId: null,
    note: note(t.note),
  }));
  for (const row of undone)
    if (!(await records.replace("transfer", row))) staleEdit("transfer", row.version - 1, row.version);
  await setBatches(records, shelf, staying, now);
  if (batch) await records.remove("batch", householdId, batch.id);
  return undone.find(({ id }) => id === asked.id) ?? asked;
}

function checkUndoable({ id, undoneAt, flightId }: TransferRow): void {
  if (undoneAt !== null) {
    refuse(409, {
      code: "transfer_undone",
      path: ["transfer"],
      limit: "a transfer not undone before",
      received: id,
      message: `undo requires a transfer not undone before, got one undone at ${undoneAt}`,
    });
  }
  if (flightId !== null) {
    refuse(409, {
      code: "undo_of_flight",
      path: ["transfer"],
      limit: "a transfer that no flight poured",
      received: id,
      message: "undo requires a transfer that no flight poured, got one of a flight: its glasses were drunk",
    });
  }
}

async function checkBatchFree(
  records: Records,
  householdId: string,
  id: string,
  name: string,
): Promise<void> {
  const uses = await usesOfBatch(records, householdId, id);
  if (uses.length === 0) return;
  refuse(409, {
    code: "batch_in_use",
    path: ["transfer"],
    limit: "a batch that no recipe or flight uses",
    received: uses,
    message: `undoing a batch requires one that nothing uses, got ${name}, used by ${uses.join(", ")}`,
  });
}

function refuseBroken(
  shelf: Shelf,
  asked: TransferRow,
  broken: { readonly transferId: string; readonly message: string },
): never {
  const first = shelf.transfers.find(({ id }) => id === broken.transferId);
  const at = first ? `transfer ${first.seq} of ${first.at}` : "a later transfer";
  refuse(409, {
    code: "undo_breaks_later",
    path: ["transfer"],
    limit: "a transfer without which all that followed still stands",
    received: broken.transferId,
    message: `undoing transfer ${asked.seq} requires all that followed to stand without it, got ${at} broken: ${broken.message}`,
  });
}

/** S9: what is kept for sealed flights must still be there, and be what it was. */
function checkKept(shelf: Shelf, after: LedgerState, going: readonly TransferRow[]): void {
  const touched = new Set(
    going.flatMap(({ from, to }) => [from, to]).flatMap((a) => (a.kind === "vessel" ? [a.vesselId] : [])),
  );
  for (const vesselId of touched) {
    const kept = keptMl(shelf, vesselId);
    if (kept === 0) continue;
    const wasMl = volumeOf(contentsOfVessel(shelf.state, vesselId));
    const leftMl = volumeOf(contentsOfVessel(after, vesselId));
    const path = ["transfer"];
    if (leftMl < kept - wasMl * TOLERANCE)
      refuseKept(shelf, vesselId, { wasMl, askedMl: wasMl - leftMl, keptMl: kept }, path);
    if (going.some(({ to }) => to.kind === "vessel" && to.vesselId === vesselId))
      refuseKept(shelf, vesselId, null, path);
  }
}
