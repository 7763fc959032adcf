import type { Frame } from "./frame.ts";
import type { Level } from "./level.ts";

/** Room for one scan, used again: the whiskeys of a level side by side in memory, and boxes around its groups. */
export type ScanRoom = {
  readonly beta: Float64Array;
  readonly shift: Float64Array;
  /** Root of what is left; the same over the length in M; the length's inverse. */
  readonly root: Float64Array;
  readonly across: Float64Array;
  readonly inverse: Float64Array;
  /** By run of a group: where it starts, its group, the least `across`, the box around its normed rows. */
  readonly start: Int32Array;
  readonly group: Int32Array;
  readonly leastAcross: Float64Array;
  readonly low: Float64Array[];
  readonly high: Float64Array[];
  readonly partners: Int32Array;
  /** Bounds in the making. */
  readonly highest: Float64Array;
  runs: number;
};

export const scanRoomOf = (n: number): ScanRoom => ({
  beta: new Float64Array(n),
  shift: new Float64Array(n),
  root: new Float64Array(n),
  across: new Float64Array(n),
  inverse: new Float64Array(n),
  start: new Int32Array(n + 1),
  group: new Int32Array(n),
  leastAcross: new Float64Array(n),
  low: [],
  high: [],
  partners: new Int32Array(n),
  highest: new Float64Array(n),
  runs: 0,
});

/** Fills the room for a level whose whiskeys stand group by group. */
export function furnish(room: ScanRoom, frame: Frame, level: Level, groupOf: Int32Array): void {
  const { place, size, rest, whole, z, prefix } = level;
  const dim = prefix.length;
  const { beta, shift, root, across, inverse, start, group, leastAcross, low, high } = room;
  while (low.length < dim) {
    low.push(new Float64Array(start.length));
    high.push(new Float64Array(start.length));
  }
  let run = -1;
  for (let x = 0; x < size; x += 1) {
    const k = place[x]!;
    beta[x] = frame.beta[k]!;
    shift[x] = frame.alpha[k]!;
    root[x] = Math.sqrt(Math.max(0, rest[x]!));
    inverse[x] = 1 / Math.sqrt(whole[x]!);
    across[x] = root[x]! * inverse[x]!;
    if (run < 0 || group[run] !== groupOf[k]) {
      run += 1;
      start[run] = x;
      group[run] = groupOf[k]!;
      leastAcross[run] = Infinity;
      for (let r = 0; r < dim; r += 1) {
        low[r]![run] = Infinity;
        high[r]![run] = -Infinity;
      }
    }
    leastAcross[run] = Math.min(leastAcross[run]!, across[x]!);
    for (let r = 0; r < dim; r += 1) {
      const normed = z[r]![x]! * inverse[x]!;
      if (normed < low[r]![run]!) low[r]![run] = normed;
      if (normed > high[r]![run]!) high[r]![run] = normed;
    }
  }
  room.runs = run + 1;
  start[room.runs] = size;
}
