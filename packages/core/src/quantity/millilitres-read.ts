import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Volume as read at whatever temperature the liquid had, in mL. Worth nothing without that temperature. */
export type MillilitresRead = Branded<"millilitresRead">;

/**
 * Volume as read at the liquid's own temperature, in mL. Domain 0 to Infinity.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * millilitresRead(100); // 100
 */
export function millilitresRead(x: number): MillilitresRead {
  return within("millilitresRead", "mL", x, 0, Infinity) as MillilitresRead;
}
