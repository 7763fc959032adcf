import { cholesky, inverseOf, type Square } from "../numeric/index.ts";

/** X'X of runs, row after row. */
export function information(rows: readonly Float64Array[], p: number): Square {
  const m = new Float64Array(p * p);
  for (const row of rows)
    for (let i = 0; i < p; i += 1)
      for (let j = 0; j < p; j += 1)
        m[i * p + j] = (m[i * p + j] as number) + (row[i] as number) * (row[j] as number);
  return m;
}

/** The log of the determinant of X'X; −Infinity where the terms cannot be told apart. */
export function logDeterminant(m: Square, p: number): number {
  const l = cholesky(m, p);
  if (l === null) return -Infinity;
  let sum = 0;
  for (let i = 0; i < p; i += 1) sum += 2 * Math.log(l[i * p + i] as number);
  return sum;
}

/** The inverse of X'X, or null where the terms cannot be told apart. */
export function dispersion(m: Square, p: number): Square | null {
  const l = cholesky(m, p);
  return l === null ? null : inverseOf(l, p);
}

/** a' S b. */
export function form(s: Square, a: ArrayLike<number>, b: ArrayLike<number>): number {
  const p = a.length;
  let sum = 0;
  for (let i = 0; i < p; i += 1) {
    let part = 0;
    for (let j = 0; j < p; j += 1) part += (s[i * p + j] as number) * (b[j] as number);
    sum += (a[i] as number) * part;
  }
  return sum;
}

/** S W S, and the trace of S W. */
export function sandwiched(
  s: Square,
  w: Square,
  p: number,
): { readonly sws: Square; readonly trace: number } {
  const times = (a: Square, b: Square): Square => {
    const c = new Float64Array(p * p);
    for (let i = 0; i < p; i += 1)
      for (let k = 0; k < p; k += 1)
        for (let j = 0; j < p; j += 1)
          c[i * p + j] = (c[i * p + j] as number) + (a[i * p + k] as number) * (b[k * p + j] as number);
    return c;
  };
  const sw = times(s, w);
  let trace = 0;
  for (let i = 0; i < p; i += 1) trace += sw[i * p + i] as number;
  return { sws: times(sw, s), trace };
}
