import type { Intensity } from "./whiskey.ts";

/**
 * By about how much a noted intensity of 0 to 10 may be off, one standard deviation: one taster, one evening. Common practice, no
 * source; said beside every figure that rests on it.
 */
export const NOTED_SD = 1;

/** What a person noted, as a search takes it: a bare number is off by about as much as notes are; null stays not known. */
export const asNoted = (intensity: Intensity): Exclude<Intensity, number> =>
  typeof intensity === "number" ? { value: intensity, sd: NOTED_SD } : intensity;
