/** One row: a figure, what it may be at most where anything is said, and what it stands beside. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: "ms" | "times" | "MB";
  readonly most?: number;
  readonly beside?: string;
}

const written = (value: number): string => value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0);

/**
 * Prints the figures of one subject as a Markdown table.
 *
 * @returns how many were over their bound, or no number
 */
export function boundedTable(subject: string, figures: readonly Figure[]): number {
  console.log(`\n| ${subject} | | beside | bound | |\n| --- | ---: | --- | --- | --- |`);
  let missed = 0;
  for (const { name, value, unit, most, beside = "" } of figures) {
    const kept = most === undefined || value <= most;
    if (!kept) missed += 1;
    const bound = most === undefined ? " | " : `<= ${most} ${unit} | ${kept ? "kept" : "MISSED"}`;
    console.log(`| ${name} | ${written(value)} ${unit} | ${beside} | ${bound} |`);
  }
  return missed;
}
