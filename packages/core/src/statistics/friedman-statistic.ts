import { midranks } from "./midranks.ts";

/** What Friedman's test reads from a table: twice the midranks, so that everything is a whole number. */
export interface RankTable {
  /** Twice the midranks, one row a judge. */
  readonly doubled: readonly (readonly number[])[];
  /** Twice the rank sums, one an item. */
  readonly doubledSums: readonly number[];
  /** Σ over items of (doubled rank sum − its mean)², exactly. */
  readonly between: number;
  /** Σ over judges and items of (doubled rank − its mean)², exactly; 0 when every judge tied everything. */
  readonly spread: number;
}

/** Σ over items of (doubled rank sum − mean)², the mean being judges·(items + 1). */
export const betweenSquares = (doubledSums: readonly number[], judges: number): number =>
  doubledSums.reduce((sum, x) => sum + (x - judges * (doubledSums.length + 1)) ** 2, 0);

/** Ranks each judge's row by itself, ties sharing the mean rank. */
export function rankTable(table: readonly (readonly number[])[]): RankTable {
  const doubled = table.map((row) => midranks(row).map((rank) => 2 * rank));
  const items = doubled[0]?.length ?? 0;
  const doubledSums = Array.from({ length: items }, (_, item) =>
    doubled.reduce((sum, row) => sum + (row[item] ?? 0), 0),
  );
  return {
    doubled,
    doubledSums,
    between: betweenSquares(doubledSums, table.length),
    spread: doubled.reduce((sum, row) => sum + betweenSquares(row, 1), 0),
  };
}
