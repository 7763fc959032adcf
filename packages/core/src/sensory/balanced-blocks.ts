import { binomial } from "../statistics/index.ts";
import { LISTS, STARTERS, type Starters } from "./balanced-blocks.data.ts";

/** Most servings for which all ways of choosing k of v are listed as a design. */
const MOST_SUBSETS = 120;

const upward = (block: readonly number[]): number[] => block.toSorted((a, b) => a - b);

/** Every block that comes of moving the starters on, each once. */
function moved({ modulus, starters }: Starters): number[][] {
  return starters.flatMap((starter) => {
    const blocks = Array.from({ length: modulus }, (_, step) =>
      upward(starter.map((thing) => (thing === modulus ? thing : (thing + step) % modulus))),
    );
    return blocks.filter((block, i) => blocks.findIndex((other) => other.join() === block.join()) === i);
  });
}

function subsets(v: number, k: number, from = 0): number[][] {
  if (k === 0) return [[]];
  return Array.from({ length: Math.max(0, v - from - k + 1) }, (_, i) => from + i).flatMap((first) =>
    subsets(v, k - 1, first + 1).map((rest) => [first, ...rest]),
  );
}

function listed(v: number, k: number): number[][] | null {
  const starters = STARTERS.find((entry) => entry.v === v && entry.k === k);
  if (starters !== undefined) return moved(starters);
  const list = LISTS.find((entry) => entry.v === v && entry.k === k);
  return list === undefined
    ? null
    : list.blocks.map((block) => block.split("").map((digit) => Number.parseInt(digit, 16)));
}

/**
 * The smallest balanced incomplete block design on file for k of v: every whiskey in equally many servings, every two together
 * equally often. From the catalogue, its complement, or all ways of choosing k of v while those are few.
 *
 * @param v whiskeys, whole, 3 to 16
 * @param k glasses a serving, whole, 2 to v − 1
 * @returns the blocks, or null when none is on file (one may exist)
 * @throws RangeError outside those ranges
 * @example balancedBlocks(4, 3) // [[0, 1, 2], [0, 1, 3], [0, 2, 3], [1, 2, 3]]
 */
export function balancedBlocks(v: number, k: number): number[][] | null {
  if (!Number.isInteger(v) || v < 3 || v > 16) {
    throw new RangeError(`balancedBlocks requires a whole 3 to 16 whiskeys, got ${v}`);
  }
  if (!Number.isInteger(k) || k < 2 || k >= v) {
    throw new RangeError(`balancedBlocks requires a whole 2 to ${v - 1} glasses, got ${k}`);
  }
  const direct = listed(v, k);
  if (direct !== null) return direct;
  const rest = v - k >= 2 ? listed(v, v - k) : null;
  if (rest !== null) {
    return rest.map((block) => [...Array(v).keys()].filter((thing) => !block.includes(thing)));
  }
  return binomial(v, k) <= BigInt(MOST_SUBSETS) ? subsets(v, k) : null;
}
