/**
 * Numbers by taster that add to 0, from one number fewer: orthonormal contrasts (Helmert's), so that independent normal numbers of one
 * spread give numbers of that spread, held to add to 0. The table's own scale is what its tasters have in common.
 *
 * @returns row after row, tasters × (tasters − 1)
 * @example contrasts(2) // 0.71, −0.71
 */
export function contrasts(tasters: number): Float64Array {
  const free = Math.max(0, tasters - 1);
  const rows = new Float64Array(tasters * free);
  for (let j = 0; j < free; j += 1) {
    const size = Math.sqrt((j + 1) * (j + 2));
    for (let i = 0; i <= j; i += 1) rows[i * free + j] = 1 / size;
    rows[(j + 1) * free + j] = -(j + 1) / size;
  }
  return rows;
}

/** Numbers by taster from the free ones. */
export function byTaster(rows: Float64Array, tasters: number, free: ArrayLike<number>): Float64Array {
  const out = new Float64Array(tasters);
  for (let i = 0; i < tasters; i += 1)
    for (let j = 0; j < free.length; j += 1)
      out[i] = (out[i] as number) + (rows[i * free.length + j] as number) * (free[j] as number);
  return out;
}

/** What slopes by taster are of the free numbers. */
export function onFree(rows: Float64Array, slopes: Float64Array): Float64Array {
  const free = Math.max(0, slopes.length - 1);
  const out = new Float64Array(free);
  for (let i = 0; i < slopes.length; i += 1)
    for (let j = 0; j < free; j += 1)
      out[j] = (out[j] as number) + (rows[i * free + j] as number) * (slopes[i] as number);
  return out;
}
