import { type Contents, contentsOfVessel } from "@partsproof/core/ledger";
import { batchNow, batchPasts, NO_PAST } from "./batch-past.ts";
import type { Shelf } from "./shelf.ts";

/** What was in what went by a name in a flight: a batch as it was made, a vessel as it stands; nothing where it is not known any more. */
export function contentsByName(shelf: Shelf): (kind: string, id: string) => Contents {
  const pasts = batchPasts(shelf);
  return (kind, id) => {
    if (kind === "vessel") return contentsOfVessel(shelf.state, id);
    const batch = kind === "batch" ? shelf.batches.get(id) : undefined;
    return batch === undefined ? new Map() : ((pasts.get(id) ?? NO_PAST).made ?? batchNow(shelf, batch));
  };
}
