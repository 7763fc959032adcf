/** Straight-line interpolation in rows sorted by their `from` column; the ends' values outside them. */
export function interpolate(rows: readonly (readonly [number, number])[], from: 0 | 1, x: number): number {
  const to = from === 0 ? 1 : 0;
  const rising = (rows.at(-1)?.[from] ?? 0) > (rows[0]?.[from] ?? 0);
  let before = rows[0] as readonly [number, number];
  for (const row of rows) {
    if (rising ? row[from] >= x : row[from] <= x) {
      const width = row[from] - before[from];
      return width === 0 ? row[to] : before[to] + ((x - before[from]) / width) * (row[to] - before[to]);
    }
    before = row;
  }
  return before[to];
}
