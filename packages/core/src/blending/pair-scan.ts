import type { Frame } from "./frame.ts";
import type { Groups } from "./groups.ts";
import type { Level } from "./level.ts";
import type { PairsFound } from "./pairs-found.ts";
import { furnish, type ScanRoom } from "./scan-room.ts";

/** Rounding in M and its factor stays far below this; intensities go to 10, so M's entries to 100. */
const SLACK = 1e-9;

/** Tries one whiskey of a level with those from `from` to `to`. */
function tryRun(
  frame: Frame,
  pairs: Float64Array,
  level: Level,
  most: number,
  room: ScanRoom,
  found: PairsFound,
  x: number,
  from: number,
  to: number,
): void {
  const { beta, shift, root } = room;
  const { place, z } = level;
  const dim = level.prefix.length;
  const row = place[x]! * frame.beta.length;
  const limit = SLACK - shift[x]!;
  const rx = most * root[x]!;
  const bx = beta[x]!;
  // Two are chosen whenever a recipe has four bottles: that case without an inner loop.
  const z0 = z[0];
  const z1 = z[1];
  const plain = dim === 2 && z0 !== undefined && z1 !== undefined;
  const x0 = plain ? z0[x]! : 0;
  const x1 = plain ? z1[x]! : 0;
  for (let y = from; y < to; y += 1) {
    let left = pairs[row + place[y]!]! + shift[y]! - bx * beta[y]!;
    const bound = rx * root[y]!;
    if (plain) left -= x0 * z0[y]! + x1 * z1[y]!;
    else for (let r = 0; r < dim; r += 1) left -= z[r]![x]! * z[r]![y]!;
    if (left - bound <= limit) found.put(x, y, ((left + shift[x]!) * most) / bound);
  }
}

/** The groups, from a group on, that a box-to-box bound does not rule out. */
function partnersOf(own: number, dim: number, most: number, floor: number, room: ScanRoom): number {
  const { leastAcross, low, high, runs, partners, highest } = room;
  const turned = most * leastAcross[own]!;
  for (let run = own; run < runs; run += 1) highest[run] = turned * leastAcross[run]!;
  for (let r = 0; r < dim; r += 1) {
    const a = low[r]!;
    const b = high[r]!;
    const ownA = a[own]!;
    const ownB = b[own]!;
    for (let run = own; run < runs; run += 1) {
      const withA = ownA > 0 ? ownA * b[run]! : ownA * a[run]!;
      const withB = ownB > 0 ? ownB * b[run]! : ownB * a[run]!;
      highest[run]! += withA > withB ? withA : withB;
    }
  }
  let many = 0;
  for (let run = own; run < runs; run += 1)
    if (highest[run]! >= floor) {
      partners[many] = run;
      many += 1;
    }
  return many;
}

/**
 * All pairs of a level whose cosine in what is left of M is `most` (negative) or less. Pairs that are NaN in `pairs` are not found.
 *
 * A cosine in M is the product of the two normed rows plus that in what is left times both shares across: to be `most` there, it
 * must be low here. `frame.floor` and `frame.opposed` say how low the cosines in M can be; a box around the rows of a group says
 * how much the rows can give. Whole groups drop out.
 */
export function scanPairs(
  frame: Frame,
  pairs: Float64Array,
  level: Level,
  most: number,
  groups: Groups,
  room: ScanRoom,
  found: PairsFound,
): void {
  const { size, place, z } = level;
  const dim = level.prefix.length;
  const { floor, opposed } = frame;
  found.size = 0;
  furnish(room, frame, level, groups.of);
  const { start, group, leastAcross, across, inverse, low, high, runs, partners, highest } = room;
  if (dim === 0 || floor <= -1) {
    for (let x = 0; x < size; x += 1) tryRun(frame, pairs, level, most, room, found, x, x + 1, size);
    return;
  }
  for (let own = 0; own < runs; own += 1) {
    const many = partnersOf(own, dim, most, floor, room);
    if (many === 0) continue;
    for (let x = start[own]!; x < start[own + 1]!; x += 1) {
      const turned = most * across[x]!;
      for (let turn = 0; turn < many; turn += 1) highest[turn] = turned * leastAcross[partners[turn]!]!;
      for (let r = 0; r < dim; r += 1) {
        const normed = z[r]![x]! * inverse[x]!;
        const side = normed > 0 ? high[r]! : low[r]!;
        for (let turn = 0; turn < many; turn += 1) highest[turn]! += normed * side[partners[turn]!]!;
      }
      const row = place[x]! * groups.count;
      for (let turn = 0; turn < many; turn += 1) {
        if (highest[turn]! < floor) continue;
        const run = partners[turn]!;
        if (opposed !== null && highest[turn]! < opposed[row + group[run]!]! - SLACK) continue;
        tryRun(frame, pairs, level, most, room, found, x, run === own ? x + 1 : start[run]!, start[run + 1]!);
      }
    }
  }
}
