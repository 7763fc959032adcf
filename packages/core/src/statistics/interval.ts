/** A range of values of a quantity; an end that nothing bounds is ±Infinity or the end of the quantity's own range. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Both ends bounded, or only one: "lower" says "at least", "upper" says "at most". */
export type Sides = "both" | "lower" | "upper";

/** The probability that each bounded end may miss by. */
export function missEachEnd(level: number, sides: Sides): number {
  if (!(level > 0 && level < 1)) throw new RangeError(`an interval requires 0 < level < 1, got ${level}`);
  return sides === "both" ? (1 - level) / 2 : 1 - level;
}
