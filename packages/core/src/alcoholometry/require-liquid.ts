import type { MassFraction } from "../quantity/index.ts";
import { freezingPoint, weakestLiquid } from "./freezing-point.ts";

/** Whether a mixture is below its freezing point by more than the doubt about it. */
export function isFrozen(p: number, t: number): boolean {
  return p < weakestLiquid(t);
}

/** The words of every refusal of a frozen mixture. */
export function frozenMessage(p: number, t: number): string {
  const at = freezingPoint(p as MassFraction);
  return `temperature requires at least the freezing point (about ${at?.toFixed(1)} °C for ${(100 * p).toFixed(1)} % mass), got ${t} °C`;
}

/** Throws the house RangeError for a mixture that is frozen at `t`. */
export function requireLiquid(p: number, t: number): void {
  if (isFrozen(p, t)) throw new RangeError(frozenMessage(p, t));
}
