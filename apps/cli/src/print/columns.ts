/** A column of a table; numbers stand to the right. */
export interface Column<T> {
  readonly head: string;
  readonly cell: (row: T) => string;
  readonly right?: true;
}

/** Rows under their heads, two spaces apart; `empty` where there are none. */
export function columns<T>(rows: readonly T[], shown: readonly Column<T>[], empty: string): string {
  if (rows.length === 0) return empty;
  const lines = [shown.map(({ head }) => head), ...rows.map((row) => shown.map(({ cell }) => cell(row)))];
  const widths = shown.map((_, i) => Math.max(...lines.map((line) => (line[i] ?? "").length)));
  return lines
    .map((line) =>
      line
        .map((cell, i) => (shown[i]?.right ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
