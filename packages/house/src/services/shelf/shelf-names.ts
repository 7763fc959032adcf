import { contentsOfVessel } from "@partsproof/core/ledger";
import type { WhiskeyRow } from "../rows.ts";
import type { Shelf } from "./shelf.ts";

/** Maker, name and release as one line. */
export function whiskeyLabel({
  maker,
  name,
  release,
}: Pick<WhiskeyRow, "maker" | "name" | "release">): string {
  return [maker, name, release].filter((part) => part !== "").join(" ");
}

/** What a liquid of the ledger is called. */
export function liquidLabel(shelf: Shelf, liquidId: string): string {
  const whiskey = shelf.whiskeys.get(liquidId);
  return whiskey ? whiskeyLabel(whiskey) : liquidId;
}

/** The whiskey that is all a vessel holds, or null: empty, watered or mixed. */
export function onlyWhiskeyIn(shelf: Shelf, vesselId: string): string | null {
  const liquids = [...contentsOfVessel(shelf.state, vesselId).keys()];
  const [only] = liquids;
  return liquids.length === 1 && only !== undefined && shelf.whiskeys.has(only) ? only : null;
}

/** The name a glass poured from this vessel can be guessed to be (F1). */
export function nameOf(shelf: Shelf, vesselId: string): { readonly nameId: string; readonly label: string } {
  const vessel = shelf.vessels.get(vesselId);
  if (!vessel) throw new RangeError(`vessel requires to be on this shelf, got ${vesselId}`);
  const only = onlyWhiskeyIn(shelf, vesselId);
  if (vessel.kind === "bottle" && only !== null && only === vessel.whiskeyId)
    return { nameId: `whiskey:${only}`, label: liquidLabel(shelf, only) };
  const batch = vessel.batchId === null ? undefined : shelf.batches.get(vessel.batchId);
  if (batch) return { nameId: `batch:${batch.id}`, label: batch.name };
  return { nameId: `vessel:${vesselId}`, label: vessel.label };
}
