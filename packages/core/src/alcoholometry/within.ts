/** Throws the house RangeError when `x` is not a number in [low, high]. */
export function within(what: string, unit: string, x: number, low: number, high: number): void {
  if (x >= low && x <= high) return;
  throw new RangeError(
    `${what} requires a number from ${low} to ${high}, got ${x}${unit === "" ? "" : ` ${unit}`}`,
  );
}
