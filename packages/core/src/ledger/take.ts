import { addContents, type Contents, contentsOfPortion, massesOf, splitContents } from "./contents.ts";
import { printed, type Refused, refuse } from "./refusal.ts";
import { contentsOf, type LedgerState } from "./state.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { Transfer } from "./transfer.ts";
import { volumeOf } from "./volume-of.ts";

export type Taken = { readonly ok: true; readonly taken: Contents; readonly rest: Contents };

/** What a checked transfer lifts out of its `from` account, and what that account is left with. */
export function take(state: LedgerState, transfer: Transfer): Taken | Refused {
  const { amount, from } = transfer;
  const held = contentsOf(state, from);
  if (amount.kind === "liquid") {
    const taken = contentsOfPortion(amount.liquidId, amount);
    return { ok: true, taken, rest: addContents(held, taken, -1) };
  }
  const at = { transferId: transfer.id, ...(from.kind === "vessel" ? { vesselId: from.vesselId } : {}) };
  const unit = amount.kind === "volume" ? "mL" : "g";
  const { ethanolG, waterG } = massesOf(held);
  const there = amount.kind === "volume" ? volumeOf(held) : ethanolG + waterG;
  const asked = amount.kind === "all" ? there : amount.kind === "volume" ? amount.ml : amount.g;
  if (!(there > 0))
    return refuse("vessel_empty", at, {
      what: "pouring out",
      requires: "a vessel that is not empty",
      limit: 0,
      received: amount.kind === "all" ? "all" : asked,
      ...(amount.kind === "all" ? {} : { unit }),
    });
  if (asked > there * (1 + TOLERANCE))
    return refuse("vessel_short", at, {
      what: "pouring out",
      requires: `at most the ${printed(there)} ${unit} in the vessel`,
      limit: there,
      received: asked,
      unit,
    });
  return { ok: true, ...splitContents(held, asked >= there * (1 - TOLERANCE) ? 1 : asked / there) };
}
