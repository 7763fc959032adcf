import {
  contentsOfVessel,
  type LedgerState,
  massesOf,
  type Refusal,
  volumeOf,
} from "@partsproof/core/ledger";
import type { TransferAmount } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import type { VesselRow } from "../rows.ts";
import type { Shelf } from "./shelf.ts";
import { keptMl } from "./shelf-kept.ts";

type Path = readonly (string | number)[];

/** Millilitres to a tenth, as a person reads a measuring glass. */
const ml = (x: number): string => `${Number(x.toFixed(1))} mL`;

/** What the ledger of core says no to, as an issue: limit and received in mL at 20 °C (S5). */
export function refuseMove(
  shelf: Shelf,
  state: LedgerState,
  entry: { readonly amount: TransferAmount },
  refusal: Refusal,
  path: Path,
  ignoreHoldsOf?: string,
): never {
  const vesselId = refusal.vesselId ?? "";
  const label = shelf.vessels.get(vesselId)?.label ?? "vessel";
  if (refusal.code === "vessel_short" || refusal.code === "vessel_empty") {
    const wasMl = volumeOf(contentsOfVessel(state, vesselId));
    const kept = keptMl(shelf, vesselId, ignoreHoldsOf);
    const askedMl = askedIn(state, vesselId, entry.amount);
    if (kept > 0) refuseKept(shelf, vesselId, { wasMl, askedMl, keptMl: kept }, path);
    const limit = `${ml(wasMl)} in ${label}`;
    refuse(422, {
      code: "vessel_short",
      path: [...path],
      limit,
      received: askedMl,
      message: `pouring out of ${label} requires at most the ${ml(wasMl)} in it, got ${ml(askedMl)}`,
    });
  }
  const vessel = shelf.vessels.get(vesselId);
  if (refusal.code === "vessel_overflow" && vessel) refuseOverflow(vessel, Number(refusal.received), path);
  const unit = refusal.unit === null ? "" : ` ${refusal.unit}`;
  refuse(422, {
    code: refusal.code,
    path: [...path],
    limit: refusal.limit === null ? refusal.message : `${refusal.limit}${unit}`,
    received: refusal.received,
    message: refusal.message,
  });
}

/** S5: more than the vessel can hold. */
export function refuseOverflow(
  { label, capacityMl }: Pick<VesselRow, "label" | "capacityMl">,
  receivedMl: number,
  path: Path,
): never {
  refuse(422, {
    code: "vessel_overflow",
    path: [...path],
    limit: `${ml(capacityMl)}, all that ${label} holds`,
    received: receivedMl,
    message: `filling ${label} requires at most ${ml(capacityMl)} in it, got ${ml(receivedMl)}`,
  });
}

/** S9: liquid kept for a sealed flight is neither poured out nor poured onto. Names no flight and no glass. */
export function refuseKept(
  shelf: Shelf,
  vesselId: string,
  out: { readonly wasMl: number; readonly askedMl: number; readonly keptMl: number } | null,
  path: Path,
): never {
  const label = shelf.vessels.get(vesselId)?.label ?? "vessel";
  if (out === null) {
    refuse(409, {
      code: "vessel_kept",
      path: [...path],
      limit: "a vessel with nothing kept for sealed flights",
      received: label,
      message: `changing what a vessel holds requires one with nothing kept for sealed flights, got ${label}`,
    });
  }
  const limit = `${ml(Math.max(0, out.wasMl - out.keptMl))} free (${ml(out.keptMl)} kept for sealed flights)`;
  refuse(422, {
    code: "vessel_short",
    path: [...path],
    limit,
    received: out.askedMl,
    message: `pouring out of ${label} requires at most ${limit}, got ${ml(out.askedMl)}`,
  });
}

/** What was asked, in mL of what the vessel holds. */
function askedIn(state: LedgerState, vesselId: string, amount: TransferAmount): number {
  const held = contentsOfVessel(state, vesselId);
  const wasMl = volumeOf(held);
  if (amount.kind === "volume") return amount.ml;
  if (amount.kind === "all") return wasMl;
  const { ethanolG, waterG } = massesOf(held);
  // An empty vessel has no density to go by; water's, 1 g for 1 mL, is near enough for the message.
  return wasMl > 0 ? (amount.g * wasMl) / (ethanolG + waterG) : amount.g;
}
