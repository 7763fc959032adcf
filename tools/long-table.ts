export interface LongRow {
  readonly suite: string;
  readonly size: string;
  readonly result: string;
  /** Wall-clock seconds, where the row is a whole suite. */
  readonly seconds?: number;
}

/** Read a line `LONG <suite> | <size> | <result>`; undefined for any other line. */
export const readLongLine = (line: string): LongRow | undefined => {
  const [suite, size, result, ...rest] =
    /^LONG (.+)$/
      .exec(line.trim())?.[1]
      ?.split("|")
      .map((cell) => cell.trim()) ?? [];
  return suite && size && result && rest.length === 0 ? { suite, size, result } : undefined;
};

const duration = (seconds: number): string =>
  seconds < 90 ? `${seconds.toFixed(1)} s` : `${(seconds / 60).toFixed(1)} min`;

/** The rows as a Markdown table with aligned columns. */
export const table = (rows: readonly LongRow[]): string => {
  const cells = [
    ["suite", "size", "result", "time"],
    ...rows.map(({ suite, size, result, seconds }) => [
      suite,
      size,
      result,
      seconds === undefined ? "" : duration(seconds),
    ]),
  ];
  const widths = ["suite", "size", "result", "time"].map((_, column) =>
    Math.max(3, ...cells.map((row) => row[column]?.length ?? 0)),
  );
  const print = (row: readonly string[]): string =>
    `| ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(" | ")} |`;
  const [head = [], ...body] = cells;
  return [print(head), print(widths.map((width) => "-".repeat(width))), ...body.map(print)].join("\n");
};
