import type { Frame } from "./frame.ts";
import type { Level } from "./level.ts";
import type { PairsFound } from "./pairs-found.ts";
import { type Strong, strongFirst, strongOf } from "./strong-first.ts";

/** Rounding in M and its factor stays far below this; intensities go to 10, so M's entries to 100. */
const SLACK = 1e-9;

/** Room for one scan, used again. */
export type ScanRoom = {
  readonly strong: Strong;
  readonly place: Int32Array;
  readonly shift: Float64Array;
  /** One row for each chosen whiskey, then beta, then the root of what is left. */
  readonly rows: Float64Array[];
};

export const scanRoomOf = (n: number): ScanRoom => ({
  strong: strongOf(n),
  place: new Int32Array(n),
  shift: new Float64Array(n),
  rows: [],
});

/** Puts the whiskeys in order, strong ones first, side by side in memory. */
function gather(frame: Frame, level: Level, most: number, room: ScanRoom): number {
  const { alpha, beta, floor } = frame;
  const dim = level.prefix.length;
  const { strong, place, shift, rows } = room;
  if (dim > 0 && floor > -1) strongFirst(level, most, floor, strong);
  else {
    strong.size = level.size;
    for (let x = 0; x < level.size; x += 1) {
      strong.at[x] = x;
      strong.along[x] = 1;
      strong.across[x] = 0;
    }
  }
  while (rows.length < dim + 2) rows.push(new Float64Array(strong.at.length));
  for (let x = 0; x < strong.size; x += 1) {
    const from = strong.at[x]!;
    const k = level.place[from]!;
    place[x] = k;
    shift[x] = alpha[k]!;
    for (let r = 0; r < dim; r += 1) rows[r]![x] = level.z[r]![from]!;
    rows[dim]![x] = beta[k]!;
    rows[dim + 1]![x] = Math.sqrt(Math.max(0, level.rest[from]!));
  }
  return strong.size;
}

/**
 * All pairs of a level whose cosine in what is left of M is `most` (negative) or less. Pairs that are NaN in `pairs` are not found.
 * `frame.floor` must be a lower bound of the cosines in M of the pairs that are not NaN; -1 when none is known.
 */
export function scanPairs(
  frame: Frame,
  pairs: Float64Array,
  level: Level,
  most: number,
  room: ScanRoom,
  found: PairsFound,
): void {
  const n = frame.beta.length;
  const dim = level.prefix.length;
  const size = gather(frame, level, most, room);
  const { place, shift, rows } = room;
  const { at, along, across } = room.strong;
  const { floor } = frame;
  const root = rows[dim + 1]!;
  const beta = rows[dim]!;
  const first = rows[0]!;
  const second = rows[1]!;
  found.size = 0;
  for (let x = 0; x + 1 < size; x += 1) {
    if (along[x]! * along[x]! + most * across[x]! * across[x]! < floor) break;
    let end = size;
    for (let low = x + 1; low < end; ) {
      const middle = (low + end) >> 1;
      if (along[x]! * along[middle]! + most * across[x]! * across[middle]! < floor) end = middle;
      else low = middle + 1;
    }
    const row = place[x]! * n;
    const limit = SLACK - shift[x]!;
    const rx = most * root[x]!;
    const bx = beta[x]!;
    const fx = first[x]!;
    const sx = second[x]!;
    for (let y = x + 1; y < end; y += 1) {
      let left = pairs[row + place[y]!]! + shift[y]! - bx * beta[y]! - rx * root[y]!;
      if (dim === 2) left -= fx * first[y]! + sx * second[y]!;
      else for (let r = 0; r < dim; r += 1) left -= rows[r]![x]! * rows[r]![y]!;
      if (left <= limit) {
        const bound = rx * root[y]!;
        found.put(at[x]!, at[y]!, ((left + shift[x]! + bound) * most) / bound);
      }
    }
  }
}
