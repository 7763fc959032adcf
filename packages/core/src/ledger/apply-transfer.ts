import { move } from "./move.ts";
import type { Refused } from "./refusal.ts";
import type { LedgerResult, LedgerState } from "./state.ts";
import type { Transfer } from "./transfer.ts";

/**
 * The state after one more transfer, or the refusal that names the bound it breaks. The given state is not
 * touched; every account the transfer leaves alone is the same object in the new state.
 */
export function applyTransfer(state: LedgerState, transfer: Transfer): LedgerResult | Refused {
  if (transfer.undone === true) return { ok: true, state };
  const moved = move(state, transfer);
  if (!moved.ok) return moved;
  const accounts = new Map(state.accounts);
  for (const [key, contents] of moved.changed) accounts.set(key, contents);
  return { ok: true, state: { vessels: state.vessels, accounts, lastSeq: transfer.seq } };
}
