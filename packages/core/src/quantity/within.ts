/**
 * Throws the house RangeError when `x` is not a number in [low, high]; otherwise returns it.
 * A wrong value here is a caller's bug. Text from outside goes through the parse functions, which never throw.
 */
export function within(what: string, unit: string, x: number, low: number, high: number): number {
  if (x >= low && x <= high && Number.isFinite(x)) return x;
  const condition =
    high === Infinity ? `a finite number of ${low} or more` : `a number from ${low} to ${high}`;
  throw new RangeError(`${what} requires ${condition}, got ${x}${unit === "" ? "" : ` ${unit}`}`);
}
