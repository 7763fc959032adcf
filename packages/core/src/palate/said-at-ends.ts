import { SCALE } from "./prior.data.ts";
import type { AttributeStudy } from "./studied.ts";

/** Before anything is known of it, a level said at the end of the scale is taken for one so far beyond, and off by so much more (squared). */
const BEYOND = 0.5;
const BEYOND_VARIANCE = 1.5;

/** Whether a saying stands at the end of the scale, where it may have been meant lower (−1) or higher (1). */
export const endOf = (said: number): -1 | 0 | 1 => (said <= SCALE.low ? -1 : said >= SCALE.high ? 1 : 0);

/** Values and variances of sayings as first taken. */
export function beginEnds(said: Float64Array, own: Float64Array): Pick<AttributeStudy, "value" | "variance"> {
  return {
    value: said.map((level) => level + BEYOND * endOf(level)),
    variance: own.map((by, n) => by + (endOf(said[n] as number) === 0 ? 0 : BEYOND_VARIANCE)),
  };
}
