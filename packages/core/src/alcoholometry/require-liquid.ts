import type { MassFraction } from "../quantity/index.ts";
import { freezingPoint, weakestLiquid } from "./freezing-point.ts";

/** Throws the house RangeError for a mixture below its freezing point by more than the doubt about it. */
export function requireLiquid(p: number, t: number): void {
  if (p >= weakestLiquid(t)) return;
  const freezing = freezingPoint(p as MassFraction) as number;
  throw new RangeError(
    `temperature requires at least the freezing point (about ${freezing.toFixed(1)} °C for ${(100 * p).toFixed(1)} % mass), got ${t} °C`,
  );
}
