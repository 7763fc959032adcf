/** So many neighbours in a row are looked at as one first. */
export const ALIKE = 8;

/**
 * The rows in an order in which each run of `ALIKE` is alike: parted again and again at the middle of the widest column.
 *
 * @param rows equally long, none to some thousands
 */
export function alikeOrder(rows: readonly Float64Array[]): readonly number[] {
  const part = (some: readonly number[]): readonly number[] => {
    if (some.length <= ALIKE) return some;
    const width = (column: number): number => {
      const values = some.map((n) => rows[n]![column]!);
      return Math.max(...values) - Math.min(...values);
    };
    let [widest, most] = [0, -1];
    for (let column = 0; column < rows[0]!.length; column += 1) {
      const own = width(column);
      if (own > most) [widest, most] = [column, own];
    }
    const sorted = some.toSorted((a, b) => rows[a]![widest]! - rows[b]![widest]! || a - b);
    // At a multiple of the run's length, so that runs do not cross the cut.
    const middle = Math.max(ALIKE, Math.round(some.length / 2 / ALIKE) * ALIKE);
    return [...part(sorted.slice(0, middle)), ...part(sorted.slice(middle))];
  };
  return part(rows.map((_, n) => n));
}
