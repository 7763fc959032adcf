import type { Rng } from "../statistics/index.ts";
import { drawCodes } from "./blind-codes.ts";

/**
 * Fresh three-digit codes for every taster of a flight, none twice: what one taster learns of a code says nothing to another.
 *
 * @param glasses how many glasses each taster gets
 * @param avoid codes already used the same evening
 * @throws RangeError when the flight needs more codes than are left of 867
 * @example flightCodes([3, 3], rng) // [["482", "719", "305"], ["861", "294", "637"]]
 */
export function flightCodes(glasses: readonly number[], rng: Rng, avoid?: ReadonlySet<string>): string[][] {
  const codes = drawCodes(
    glasses.reduce((sum, count) => sum + count, 0),
    rng,
    avoid,
  );
  return glasses.map((count) => codes.splice(0, count));
}
