const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** Whole parts in lowest terms: 4 and 2 are 2 and 1. All zero stays as it is. */
export function lowestTerms(parts: readonly number[]): readonly number[] {
  const by = parts.reduce(gcd, 0);
  return by === 0 ? parts : parts.map((part) => part / by);
}

/** "4 : 2, that is 2 : 1"; only the first where it is in lowest terms already. */
export function printRatio(parts: readonly number[]): string {
  const written = parts.filter((part) => part > 0);
  const lowest = lowestTerms(written);
  const text = written.join(" : ");
  return lowest.join(" : ") === text ? text : `${text}, that is ${lowest.join(" : ")}`;
}
