import { type Contents as Held, contentsOfVessel, massesOf, volumeOf } from "@partsproof/core/ledger";
import type { SlotOf } from "../../protocol/index.ts";
import { freeMl, onlyWhiskeyIn, scaled, type Shelf } from "../shelf/index.ts";
import type { VesselRow } from "../rows.ts";
import type { SlotLiquid } from "../recipes/index.ts";

/** Some of one vessel, or of what the shelf lacks (`vessel` null). */
export interface Take {
  readonly vessel: VesselRow | null;
  readonly ml: number;
  readonly g: number;
  readonly held: Held;
}

/** Less than this left in a bottle is not worth a pour: two drops. */
const SMALLEST_POUR_ML = 0.1;

/** Whether a vessel is stock to pour from: no vial of a trial, and more than drops free in it. */
export const isStock = (shelf: Shelf, { id }: VesselRow): boolean =>
  !shelf.trialVials.has(id) && freeMl(shelf, id) >= SMALLEST_POUR_ML;

/** The vessels that hold what a slot stands for, free liquid in them: opened ones first, then the fullest (R3). */
export function stockOf(shelf: Shelf, of: SlotOf): readonly VesselRow[] {
  if (of.kind === "open") return [];
  const holds = (vessel: VesselRow) =>
    of.kind === "batch"
      ? vessel.batchId === of.batchId
      : vessel.batchId === null && onlyWhiskeyIn(shelf, vessel.id) === of.whiskeyId;
  const sealed = ({ kind, openedAt }: VesselRow) => Number(kind === "bottle" && openedAt === null);
  const free = (vessel: VesselRow) => freeMl(shelf, vessel.id);
  return [...shelf.vessels.values()]
    .filter((vessel) => holds(vessel) && isStock(shelf, vessel))
    .toSorted((a, b) => sealed(a) - sealed(b) || free(b) - free(a) || (a.id < b.id ? -1 : 1));
}

/** `ml` of a slot: out of its vessels in their order, and what is missing as the slot's liquid states itself. */
export function takeFrom(shelf: Shelf, stock: readonly VesselRow[], liquid: SlotLiquid, ml: number): Take[] {
  const takes: Take[] = [];
  let wanted = ml;
  for (const vessel of stock) {
    if (wanted <= 0) break;
    const taken = Math.min(wanted, freeMl(shelf, vessel.id));
    const held = contentsOfVessel(shelf.state, vessel.id);
    takes.push(takeOf(vessel, taken, scaled(held, taken / volumeOf(held))));
    wanted -= taken;
  }
  // What is left over by rounding is no shortage.
  if (wanted > ml * 1e-12) takes.push(takeOf(null, wanted, liquid.of(wanted)));
  return takes;
}

function takeOf(vessel: VesselRow | null, ml: number, held: Held): Take {
  const { ethanolG, waterG } = massesOf(held);
  return { vessel, ml, g: ethanolG + waterG, held };
}
