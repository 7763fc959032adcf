/** Whole and half ranks as they are, means to two decimals. */
export function printRank(rank: number): string {
  return String(Number(rank.toFixed(2)));
}
