/**
 * Straight-line interpolation in rows whose two columns only rise or only fall, from column `from` to the other; `x` lies within
 * that column, or beyond its last row, where the last row's value stands.
 */
export function interpolate(rows: readonly (readonly [number, number])[], from: 0 | 1, x: number): number {
  const to = from === 0 ? 1 : 0;
  let before = rows[0] as readonly [number, number];
  for (const row of rows) {
    if ((row[from] - x) * (before[from] - x) <= 0) {
      const width = row[from] - before[from];
      return width === 0 ? row[to] : before[to] + ((x - before[from]) / width) * (row[to] - before[to]);
    }
    before = row;
  }
  return before[to];
}
