import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { type Contents as Held, contentsOfMeasures, volumeOf } from "@partsproof/core/ledger";
import type { SlotOf } from "../../protocol/index.ts";
import {
  batchNow,
  type BatchPast,
  batchPasts,
  liquidLabel,
  NO_PAST,
  scaled,
  type Shelf,
  strengthOf,
} from "../shelf/index.ts";
import { refuse, unknownId } from "../refuse.ts";

/** What a slot of a recipe stands for, whether or not there is enough of it. */
export interface SlotLiquid {
  readonly label: string;
  /** So many millilitres of it, with its cost. */
  of(ml: number): Held;
}

/** Reads slots against a shelf. */
export function slotLiquids(shelf: Shelf): (of: SlotOf) => SlotLiquid {
  let pasts: ReadonlyMap<string, BatchPast> | null = null;
  return (of) => {
    if (of.kind === "open") slotOpen(of.named?.name ?? null);
    if (of.kind === "whiskey") return ofWhiskey(shelf, of.whiskeyId);
    pasts ??= batchPasts(shelf);
    return ofBatch(shelf, of.batchId, pasts);
  };
}

/** At the strength and the price of its label. */
function ofWhiskey(shelf: Shelf, whiskeyId: string): SlotLiquid {
  const whiskey = shelf.whiskeys.get(whiskeyId) ?? unknownId("whiskey", whiskeyId);
  const { priceMinor, bottleMl } = whiskey;
  const abv20 = abv20OfStrength(strengthOf(whiskey.strength));
  return {
    label: liquidLabel(shelf, whiskeyId),
    of: (volumeMl) => {
      const cost = priceMinor === null ? null : (priceMinor * volumeMl) / bottleMl;
      return contentsOfMeasures([{ liquidId: whiskeyId, volumeMl, abv20, cost }]);
    },
  };
}

/** As it is in its vessel now, or as it was made where none is left. */
function ofBatch(shelf: Shelf, batchId: string, pasts: ReadonlyMap<string, BatchPast>): SlotLiquid {
  const batch = shelf.batches.get(batchId) ?? unknownId("batch", batchId);
  const now = batchNow(shelf, batch);
  const held = volumeOf(now) > 0 ? now : (pasts.get(batchId) ?? NO_PAST).made;
  const volumeMl = volumeOf(held);
  return { label: batch.name, of: (ml) => (volumeMl > 0 ? scaled(held, ml / volumeMl) : new Map()) };
}

/** X9: what is open stands for no liquid yet. */
function slotOpen(name: string | null): never {
  const what = name === null ? "a slot that is open" : `a slot that is open, in place of ${name}`;
  refuse(422, {
    code: "slot_open",
    path: ["slots"],
    limit: "a whiskey or a batch in every slot",
    received: name,
    message: `reckoning a recipe requires a whiskey or a batch in every slot, got ${what}: fill it from the shelf first`,
  });
}
