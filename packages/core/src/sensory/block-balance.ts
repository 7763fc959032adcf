/** How even a set of incomplete servings is. */
export interface BlockBalance {
  /** Fewest and most servings of one whiskey. */
  readonly servings: readonly [fewest: number, most: number];
  /** Fewest and most times that two whiskeys meet in one serving. */
  readonly meetings: readonly [fewest: number, most: number];
  /** Most minus fewest, over whiskeys and turns, of the times a whiskey stands at a turn. */
  readonly positionImbalance: number;
  /** Most minus fewest, over ordered pairs, of the times the second comes straight after the first. */
  readonly carryOverImbalance: number;
  /** Whether every whiskey can be compared with every other, if only through others. */
  readonly connected: boolean;
}

const ends = (counts: readonly number[]): readonly [number, number] =>
  counts.length === 0 ? [0, 0] : [Math.min(...counts), Math.max(...counts)];
const range = (counts: readonly number[]): number => ends(counts)[1] - ends(counts)[0];

/**
 * Measures servings of k of v whiskeys each, by counting.
 *
 * @param blocks one row a serving: different whiskeys 0 … v − 1 in the order they are met, all rows equally long
 * @throws RangeError when a row repeats a whiskey, names one that is not there, or is of another length
 * @example blockBalance([[0, 1], [1, 2], [2, 0]], 3).meetings // [1, 1]
 */
export function blockBalance(blocks: readonly (readonly number[])[], v: number): BlockBalance {
  const k = blocks[0]?.length ?? 0;
  const turns = Array.from({ length: v * k }, () => 0);
  const meets = Array.from({ length: v * v }, () => 0);
  const follows = Array.from({ length: v * v }, () => 0);
  const bump = (counts: number[], at: number): void => void (counts[at] = (counts[at] ?? 0) + 1);
  for (const [row, block] of blocks.entries()) {
    const whole = block.every((thing) => Number.isInteger(thing) && thing >= 0 && thing < v);
    if (!whole || block.length !== k || new Set(block).size !== k) {
      throw new RangeError(
        `blockBalance requires row ${row} to name ${k} of 0 to ${v - 1}, got [${block.join()}]`,
      );
    }
    block.forEach((thing, place) => {
      bump(turns, thing * k + place);
      for (const other of block) if (other !== thing) bump(meets, thing * v + other);
      const last = block[place - 1];
      if (last !== undefined) bump(follows, last * v + thing);
    });
  }
  const offDiagonal = (counts: readonly number[]) => counts.filter((_, i) => Math.floor(i / v) !== i % v);
  const servings = Array.from(
    { length: v },
    (_, thing) => blocks.filter((block) => block.includes(thing)).length,
  );
  const reached = new Set([0]);
  // A set grows while it is gone through, so this visits everything that can be reached.
  for (const thing of reached) {
    for (const block of blocks) if (block.includes(thing)) for (const other of block) reached.add(other);
  }
  return {
    servings: ends(servings),
    meetings: ends(offDiagonal(meets)),
    positionImbalance: range(turns),
    carryOverImbalance: range(offDiagonal(follows)),
    connected: reached.size === v,
  };
}
