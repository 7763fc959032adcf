import type { Shelf } from "./shelf.ts";
import { volumeIn } from "./shelf-contents.ts";

/** Millilitres of a vessel that sealed flights keep back (F5), but for those of one flight if named. */
export function keptMl(shelf: Shelf, vesselId: string, ignoreHoldsOf?: string): number {
  let kept = 0;
  for (const flight of shelf.sealedFlights) {
    if (flight.id === ignoreHoldsOf) continue;
    for (const hold of flight.holds) if (hold.vesselId === vesselId) kept += hold.ml;
  }
  return kept;
}

/** Millilitres of a vessel that may be poured. */
export function freeMl(shelf: Shelf, vesselId: string, ignoreHoldsOf?: string): number {
  return Math.max(0, volumeIn(shelf, vesselId) - keptMl(shelf, vesselId, ignoreHoldsOf));
}
