import type { Level } from "./level.ts";

const BUCKETS = 512;
const counts = new Int32Array(BUCKETS + 1);

/**
 * The whiskeys of a level that can be one of a pair, those that the chosen ones take most of first, within 1/512.
 *
 * With s(k) the share of whiskey k's length that lies along the chosen ones and c(k) the share across, the cosine of two whiskeys
 * in M is at most s(k) s(l) + most c(k) c(l) if their cosine in what is left is at most `most`. It is at least `floor`. The bound
 * rises with s(k) and with s(l): weak whiskeys drop out, and for each whiskey the others form a run from the front.
 */
export type Strong = {
  size: number;
  /** Place in the level. */
  readonly at: Int32Array;
  /** s rounded up to its bucket's end, and the c that goes with it. */
  readonly along: Float64Array;
  readonly across: Float64Array;
};

export const strongOf = (n: number): Strong => ({
  size: 0,
  at: new Int32Array(n),
  along: new Float64Array(n),
  across: new Float64Array(n),
});

const bucketOf = (level: Level, x: number): number => {
  const along = Math.sqrt(Math.max(0, 1 - level.rest[x]! / level.whole[x]!));
  return Math.min(BUCKETS - 1, Math.floor(along * BUCKETS));
};

export function strongFirst(level: Level, most: number, floor: number, into: Strong): void {
  counts.fill(0);
  let top = 0;
  for (let x = 0; x < level.size; x += 1) {
    const bucket = bucketOf(level, x);
    counts[bucket]! += 1;
    top = Math.max(top, bucket);
  }
  const end = (bucket: number): number => (bucket + 1) / BUCKETS;
  const across = (bucket: number): number => Math.sqrt(Math.max(0, 1 - end(bucket) ** 2));
  let start = 0;
  let bucket = top;
  for (; bucket >= 0; bucket -= 1) {
    if (end(top) * end(bucket) + most * across(top) * across(bucket) < floor) break;
    const many = counts[bucket]!;
    counts[bucket] = start;
    start += many;
  }
  into.size = start;
  for (let x = 0; x < level.size; x += 1) {
    const own = bucketOf(level, x);
    if (own <= bucket) continue;
    const to = counts[own]!;
    counts[own] = to + 1;
    into.at[to] = x;
    into.along[to] = end(own);
    into.across[to] = across(own);
  }
}
