import type { Batch, Vessel, Whiskey } from "@partsproof/house/protocol";
import { whiskeyLabel } from "../../mixing/stock.ts";

export interface VesselName {
  readonly nameId: string;
  readonly label: string;
}

/**
 * The name a glass poured from a vessel can be guessed to be, as the house gives it (services, F1): a bottle with only
 * its own whiskey in it goes by the whiskey, a vessel with a batch by the batch, anything else by itself.
 */
export function vesselName(
  vessel: Pick<Vessel, "id" | "kind" | "label" | "whiskeyId" | "batchId" | "contents">,
  whiskeys: ReadonlyMap<string, Pick<Whiskey, "maker" | "name" | "release">>,
  batches: ReadonlyMap<string, Pick<Batch, "name">>,
): VesselName {
  const { composition } = vessel.contents;
  const only = composition.length === 1 ? composition[0]?.liquidId : undefined;
  if (vessel.kind === "bottle" && only !== undefined && only === vessel.whiskeyId) {
    const whiskey = whiskeys.get(only);
    return { nameId: `whiskey:${only}`, label: whiskey ? whiskeyLabel(whiskey) : vessel.label };
  }
  const batch = vessel.batchId === null ? undefined : batches.get(vessel.batchId);
  if (vessel.batchId !== null && batch) return { nameId: `batch:${vessel.batchId}`, label: batch.name };
  return { nameId: `vessel:${vessel.id}`, label: vessel.label };
}
