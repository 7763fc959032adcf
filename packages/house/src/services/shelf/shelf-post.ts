import {
  applyTransfer,
  type LedgerState,
  contentsOfVessel,
  TOLERANCE,
  volumeOf,
} from "@partsproof/core/ledger";
import type { Account, TransferAmount } from "../../protocol/index.ts";
import { newId } from "../ids.ts";
import type { House, Records } from "../ports.ts";
import { staleEdit } from "../refuse.ts";
import type { TransferRow, VesselRow } from "../rows.ts";
import { coreTransfer, type Shelf, shelfState } from "./shelf.ts";
import { keptMl } from "./shelf-kept.ts";
import { refuseKept, refuseMove } from "./shelf-refusal.ts";

/** A transfer to be written. */
export interface Entry {
  readonly from: Account;
  readonly to: Account;
  readonly amount: TransferAmount;
  /** Masses of what comes in from the shop or the tap (`liquidIn`); null out of a vessel. */
  readonly liquid: TransferRow["liquid"];
  readonly batchId?: string | null;
  readonly flightId?: string | null;
  readonly note?: string;
  /** Where in the request it was asked, for the issue. */
  readonly path?: readonly (string | number)[];
}

export interface PostOptions {
  /** This flight's own holds do not bind it: its reveal pours what they kept. */
  readonly ignoreHoldsOf?: string;
  /** The shelf as read before in the same transaction, if nothing on it changed since. */
  readonly shelf?: Shelf;
}

/**
 * Checks and writes transfers in the order given, all or none (S5, S9): thrown refusals undo the transaction.
 * Opens the sealed bottles it pours from (S3). Answers the rows written and the shelf after them.
 */
export async function post(
  records: Records,
  house: Pick<House, "clock" | "random">,
  householdId: string,
  entries: readonly Entry[],
  options: PostOptions = {},
): Promise<{ readonly rows: readonly TransferRow[]; readonly shelf: Shelf }> {
  const before = options.shelf ?? (await shelfState(records, householdId));
  const at = house.clock.now().toISOString();
  const vessels = new Map(before.vessels);
  const rows: TransferRow[] = [];
  let state = before.state;
  for (const entry of entries) {
    const row: TransferRow = {
      id: newId(house),
      householdId,
      version: 1,
      createdAt: at,
      updatedAt: at,
      seq: await records.nextSeq(householdId),
      at,
      from: entry.from,
      to: entry.to,
      amount: entry.amount,
      liquid: entry.liquid,
      batchId: entry.batchId ?? null,
      flightId: entry.flightId ?? null,
      note: entry.note ?? "",
      undoneAt: null,
    };
    const moved = applyTransfer(state, coreTransfer(row));
    const path = entry.path ?? [];
    if (!moved.ok)
      refuseMove({ ...before, vessels }, state, entry, moved.refusal, path, options.ignoreHoldsOf);
    checkKept(before, state, moved.state, entry, path, options.ignoreHoldsOf);
    for (const changed of vesselsChanged(vessels, state, row, at)) {
      vessels.set(changed.id, changed);
      if (!(await records.replace("vessel", changed)))
        staleEdit("vessel", changed.version - 1, changed.version);
    }
    await records.insert("transfer", row);
    rows.push(row);
    state = moved.state;
  }
  return { rows, shelf: { ...before, vessels, state, transfers: [...before.transfers, ...rows] } };
}

/** What sealed flights keep stays in its vessel, and stays what it is: nothing is poured onto it. */
function checkKept(
  shelf: Shelf,
  before: LedgerState,
  after: LedgerState,
  { from, to }: Entry,
  path: readonly (string | number)[],
  ignoreHoldsOf: string | undefined,
): void {
  if (from.kind === "vessel") {
    const kept = keptMl(shelf, from.vesselId, ignoreHoldsOf);
    const was = volumeOf(contentsOfVessel(before, from.vesselId));
    const left = volumeOf(contentsOfVessel(after, from.vesselId));
    if (kept > 0 && left < kept - was * TOLERANCE)
      refuseKept(shelf, from.vesselId, { wasMl: was, askedMl: was - left, keptMl: kept }, path);
  }
  if (to.kind === "vessel") {
    const kept = keptMl(shelf, to.vesselId, ignoreHoldsOf);
    if (kept > 0) refuseKept(shelf, to.vesselId, null, path);
  }
}

/** S3: the first pour out of a bottle opens it. A vessel emptied and filled anew no longer holds its old batch. */
function* vesselsChanged(
  vessels: ReadonlyMap<string, VesselRow>,
  before: LedgerState,
  { from, to, batchId }: TransferRow,
  at: string,
): Generator<VesselRow> {
  const out = from.kind === "vessel" ? vessels.get(from.vesselId) : undefined;
  if (out && out.kind === "bottle" && out.openedAt === null)
    yield { ...out, openedAt: at, version: out.version + 1, updatedAt: at };
  const into = to.kind === "vessel" ? vessels.get(to.vesselId) : undefined;
  if (
    into &&
    into.batchId !== null &&
    into.batchId !== batchId &&
    contentsOfVessel(before, into.id).size === 0
  )
    yield { ...into, batchId: null, version: into.version + 1, updatedAt: at };
}
