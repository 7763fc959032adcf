import type { Spread } from "./input.ts";

/** One rectangular spread, or none for a half width of 0. */
export function rectangular(halfWidth: number): readonly Spread[] {
  return halfWidth === 0 ? [] : [{ shape: "rectangular", halfWidth }];
}

/** One normal spread, or none for a standard deviation of 0. */
export function normal(standardDeviation: number): readonly Spread[] {
  return standardDeviation === 0 ? [] : [{ shape: "normal", standardDeviation }];
}
