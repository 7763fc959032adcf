import type { Frame } from "./frame.ts";
import type { Level } from "./level.ts";

/** Pairs found: places in the level, and the cosine in what is left of M. */
export type Pairs = { size: number; x: Int32Array; y: Int32Array; cosine: Float64Array };

export const noPairs = (): Pairs => ({
  size: 0,
  x: new Int32Array(64),
  y: new Int32Array(64),
  cosine: new Float64Array(64),
});

function put(found: Pairs, x: number, y: number, cosine: number): void {
  if (found.size === found.x.length) {
    const grown = <T extends Int32Array | Float64Array>(old: T, fresh: T): T => {
      fresh.set(old);
      return fresh;
    };
    found.x = grown(found.x, new Int32Array(2 * found.size));
    found.y = grown(found.y, new Int32Array(2 * found.size));
    found.cosine = grown(found.cosine, new Float64Array(2 * found.size));
  }
  found.x[found.size] = x;
  found.y[found.size] = y;
  found.cosine[found.size] = cosine;
  found.size += 1;
}

/** Rounding in M and its factor stays far below this; intensities go to 10, so M's entries to 100. */
const SLACK = 1e-9;

/**
 * All pairs of a level whose cosine in what is left of M is `most` (negative) or less. Pairs that are NaN in `pairs` are not found.
 */
export function scanPairs(frame: Frame, pairs: Float64Array, level: Level, most: number, found: Pairs): void {
  const { alpha, beta } = frame;
  const n = beta.length;
  const { size, place, rest, z } = level;
  const dim = z.length;
  const root = new Float64Array(size);
  const a = new Float64Array(size);
  const b = new Float64Array(size);
  for (let x = 0; x < size; x += 1) {
    root[x] = Math.sqrt(Math.max(0, rest[x]!));
    a[x] = alpha[place[x]!]!;
    b[x] = beta[place[x]!]!;
  }
  found.size = 0;
  const row = new Float64Array(dim);
  for (let x = 0; x + 1 < size; x += 1) {
    const at = place[x]! * n;
    const ax = a[x]!;
    const bx = b[x]!;
    const rx = most * root[x]!;
    for (let r = 0; r < dim; r += 1) row[r] = z[r]![x]!;
    for (let y = x + 1; y < size; y += 1) {
      let left = pairs[at + place[y]!]! - bx * b[y]! + ax + a[y]!;
      for (let r = 0; r < dim; r += 1) left -= row[r]! * z[r]![y]!;
      const bound = rx * root[y]!;
      if (left <= bound + SLACK) put(found, x, y, (left * most) / bound);
    }
  }
}
