import { foldPastRefusals, inOrder } from "./fold-ledger.ts";
import { type Refusal, refuse } from "./refusal.ts";
import type { LedgerState, Vessel } from "./state.ts";
import type { Transfer } from "./transfer.ts";

export type Undone =
  | { readonly ok: true; readonly transfers: readonly Transfer[]; readonly state: LedgerState }
  | {
      readonly ok: false;
      /** The first reason. */
      readonly refusal: Refusal;
      /** Every later transfer that would have to be undone as well, in order, each with its own reason. */
      readonly broken: readonly Refusal[];
    };

/**
 * Marks one transfer as undone and gives the state of the ledger without it. Refused when a later transfer
 * can then no longer happen; `broken` names all of those. Undoing them first makes this undo possible.
 *
 * @throws {RangeError} on a bad list of vessels.
 */
export function undoTransfer(
  vessels: Iterable<Vessel>,
  transfers: readonly Transfer[],
  transferId: string,
): Undone {
  const found = transfers.find(({ id }) => id === transferId);
  if (found === undefined || found.undone === true) {
    const code = found === undefined ? "transfer_unknown" : "transfer_undone";
    const requires = found === undefined ? "a transfer of this ledger" : "a transfer not undone before";
    const { refusal } = refuse(code, { transferId }, { what: "undo", requires, received: transferId });
    return { ok: false, refusal, broken: [] };
  }
  const without = transfers.map((transfer) =>
    transfer === found ? { ...transfer, undone: true } : transfer,
  );
  const { state, refused } = foldPastRefusals(vessels, inOrder(without));
  const [refusal] = refused;
  return refusal === undefined
    ? { ok: true, transfers: without, state }
    : { ok: false, refusal, broken: refused };
}
