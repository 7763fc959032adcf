/** A row that must come to 0 or more over a recipe, and the most that one part of some whiskeys brings. */
export type Reach = { readonly row: Float64Array; readonly most: number };

/** What the rows ask, for whiskeys that may still join. */
export function reachOf(rows: readonly Float64Array[], among: Int32Array): readonly Reach[] {
  return rows.map((row) => {
    let most = -Infinity;
    for (const k of among) if (row[k]! > most) most = row[k]!;
    return { row, most };
  });
}

/** False when `left` more parts of those whiskeys cannot make up for what the fixed ones lack. */
export function inReach(
  reach: readonly Reach[],
  support: readonly number[],
  parts: readonly number[],
  left: number,
): boolean {
  for (const { row, most } of reach) {
    let sum = left * most;
    for (let x = 0; x < support.length; x += 1) sum += parts[x]! * row[support[x]!]!;
    if (sum < 0) return false;
  }
  return true;
}
