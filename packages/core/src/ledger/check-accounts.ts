import { type Account, accountKey, isSink, isSource } from "./account.ts";
import { type Refused, refuse } from "./refusal.ts";
import type { LedgerState } from "./state.ts";
import type { Transfer } from "./transfer.ts";

/** Refuses a transfer between accounts that cannot be its two sides; else null. */
export function checkAccounts(state: LedgerState, transfer: Transfer): Refused | null {
  const { id: transferId, from, to } = transfer;
  for (const side of [from, to]) {
    if (side.kind === "vessel" && !state.vessels.has(side.vesselId))
      return refuse(
        "vessel_unknown",
        { transferId, vesselId: side.vesselId },
        { what: "transfer", requires: "a vessel of this ledger", received: side.vesselId },
      );
  }
  if (accountKey(from) === accountKey(to)) {
    const at = from.kind === "vessel" ? { transferId, vesselId: from.vesselId } : { transferId };
    return refuse("account_same", at, {
      what: "transfer",
      requires: "two different accounts",
      received: nameOf(to),
    });
  }
  if (isSink(from))
    return refuse(
      "account_direction",
      { transferId },
      { what: "transfer from", requires: "a vessel, shop or tap", received: nameOf(from) },
    );
  if (isSource(to))
    return refuse(
      "account_direction",
      { transferId },
      { what: "transfer to", requires: "a vessel, glass, drain or air", received: nameOf(to) },
    );
  return null;
}

const nameOf = (account: Account): string => (account.kind === "vessel" ? account.vesselId : account.name);
