import { type Parts, sameParts } from "@partsproof/core/learning";
import type { TriedHistory } from "@partsproof/house/protocol";

/** The vessel that holds a recipe as it is, the fullest of them; null where it must be mixed first. */
export const vesselOf = (
  parts: Parts,
  vessels: TriedHistory["vessels"],
): TriedHistory["vessels"][number] | null => vessels.find((vessel) => sameParts(vessel.parts, parts)) ?? null;

/** Where a flight is set up with these vessels in it. */
export function flightAddress(
  household: string,
  vesselIds: readonly string[],
  target: string | null,
): string {
  const towards = target === null ? "" : `&towards=${encodeURIComponent(target)}`;
  return `/h/${household}/flights/new?pour=${vesselIds.join(",")}${towards}`;
}

/** Where a mix is written down as a recipe of its own, to be made. */
export const mixAddress = (household: string, parts: Parts): string =>
  `/h/${household}/recipes/new?found=${Object.entries(parts)
    .filter(([, part]) => part > 0)
    .map(([id, part]) => `${part}*${id}`)
    .join(",")}`;
