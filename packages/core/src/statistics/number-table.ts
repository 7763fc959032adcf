/** A table of finite numbers, rows of one length. */
export type NumberTable = readonly (readonly number[])[];

/** Refuses a table that is ragged, too small or holds something that is no number. */
export function requireTable(what: string, table: NumberTable, rows: number, columns: number): void {
  const width = table[0]?.length ?? 0;
  if (table.length < rows) throw new RangeError(`${what} requires ${rows} rows or more, got ${table.length}`);
  if (width < columns) throw new RangeError(`${what} requires ${columns} columns or more, got ${width}`);
  table.forEach((row, i) => {
    if (row.length !== width)
      throw new RangeError(`${what} requires ${width} numbers in row ${i}, got ${row.length}`);
    const bad = row.find((x) => !Number.isFinite(x));
    if (bad !== undefined) throw new RangeError(`${what} requires finite numbers, got ${bad} in row ${i}`);
  });
}

/** The mean of each column. */
export const columnMeans = (table: NumberTable): number[] =>
  (table[0] ?? []).map((_, j) => table.reduce((sum, row) => sum + (row[j] ?? 0), 0) / table.length);

/** The table with each column's mean taken off. */
export function centredColumns(table: NumberTable): number[][] {
  const means = columnMeans(table);
  return table.map((row) => row.map((x, j) => x - (means[j] as number)));
}

/** The sample covariance of the columns (divisor rows − 1). */
export function covarianceOf(table: NumberTable): number[][] {
  const centred = centredColumns(table);
  const width = table[0]?.length ?? 0;
  return Array.from({ length: width }, (_, i) =>
    Array.from(
      { length: width },
      (__, j) =>
        centred.reduce((sum, row) => sum + (row[i] as number) * (row[j] as number), 0) / (table.length - 1),
    ),
  );
}
