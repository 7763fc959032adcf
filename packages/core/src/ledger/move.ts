import { accountKey } from "./account.ts";
import { checkAccounts } from "./check-accounts.ts";
import { checkAmount } from "./check-amount.ts";
import { addContents, type Contents } from "./contents.ts";
import { instantOf } from "./instant.ts";
import { printed, type Refused, refuse } from "./refusal.ts";
import { contentsOf, type LedgerState } from "./state.ts";
import { take } from "./take.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { Transfer } from "./transfer.ts";
import { volumeOf } from "./volume-of.ts";

/** The two accounts a transfer changes, with their new contents. */
export type Moved = { readonly ok: true; readonly changed: readonly (readonly [string, Contents])[] };

/** Works out one transfer against a state, which it only reads. */
export function move(state: LedgerState, transfer: Transfer): Moved | Refused {
  const refused = checkOrder(state, transfer) ?? checkAccounts(state, transfer) ?? checkAmount(transfer);
  if (refused !== null) return refused;
  const lifted = take(state, transfer);
  if (!lifted.ok) return lifted;
  const { from, to } = transfer;
  const filled = addContents(contentsOf(state, to), lifted.taken);
  const vessel = to.kind === "vessel" ? state.vessels.get(to.vesselId) : undefined;
  if (vessel !== undefined) {
    const volumeMl = volumeOf(filled);
    if (!(volumeMl <= vessel.capacityMl * (1 + TOLERANCE)))
      return refuse(
        "vessel_overflow",
        { transferId: transfer.id, vesselId: vessel.id },
        {
          what: "filling",
          requires: `at most the ${printed(vessel.capacityMl)} mL the vessel holds`,
          limit: vessel.capacityMl,
          received: volumeMl,
          unit: "mL",
        },
      );
  }
  return {
    ok: true,
    changed: [
      [accountKey(from), lifted.rest],
      [accountKey(to), filled],
    ],
  };
}

function checkOrder(state: LedgerState, { id: transferId, seq, at }: Transfer): Refused | null {
  const last = state.lastSeq;
  if (!Number.isSafeInteger(seq) || (last !== null && seq <= last)) {
    const requires = last === null ? "a whole number" : `a whole number above ${last}`;
    const limit = last === null ? {} : { limit: last };
    return refuse("seq_not_after", { transferId }, { what: "seq", requires, ...limit, received: seq });
  }
  if (Number.isNaN(instantOf(at)))
    return refuse(
      "at_unreadable",
      { transferId },
      { what: "time", requires: "an ISO 8601 date, or a time with Z or an offset", received: at },
    );
  return null;
}
