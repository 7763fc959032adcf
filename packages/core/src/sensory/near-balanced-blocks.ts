import { type Rng, shuffled } from "../statistics/index.ts";

const TRIES = 6;
const SWAPS = 1500;

/** b servings of k of v, every whiskey in equally many or one more: the least served are taken first, ties by chance. */
function evenServings(v: number, k: number, b: number, rng: Rng): number[][] {
  const served = Array.from({ length: v }, () => 0);
  return Array.from({ length: b }, () => {
    const block = shuffled([...Array(v).keys()], rng)
      .toSorted((x, y) => (served[x] ?? 0) - (served[y] ?? 0))
      .slice(0, k);
    for (const thing of block) served[thing] = (served[thing] ?? 0) + 1;
    return block;
  });
}

/**
 * Servings of k of v whiskeys that come close to balance when no balanced design has that many servings: whiskeys served
 * equally often to within one, and two whiskeys together as evenly as a search finds. What is left is measured by
 * `blockBalance`, not promised.
 *
 * The search exchanges two whiskeys between two servings whenever the sum of squared meetings does not grow, from several
 * starts; it keeps how often each is served. Cost: some milliseconds for 16 whiskeys and 40 servings.
 *
 * @throws RangeError unless 2 <= k < v <= 16 and 1 <= b <= 400, all whole
 */
export function nearBalancedBlocks(v: number, k: number, b: number, rng: Rng): number[][] {
  if (![v, k, b].every(Number.isInteger) || k < 2 || k >= v || v > 16 || b < 1 || b > 400) {
    throw new RangeError(
      `nearBalancedBlocks requires 2 <= k < v <= 16 and 1 to 400 servings, got k ${k}, v ${v}, ${b} servings`,
    );
  }
  let best: { blocks: number[][]; cost: number } | undefined;
  // All meetings equal, to within the one that whole numbers may need: nothing can be more even.
  const all = (b * k * (k - 1)) / 2;
  const pairs = (v * (v - 1)) / 2;
  const each = Math.floor(all / pairs);
  const ideal = pairs * each ** 2 + (all - pairs * each) * (2 * each + 1);
  for (let start = 0; start < TRIES && (best === undefined || best.cost > ideal); start += 1) {
    const tried = exchanged(evenServings(v, k, b, rng), v, ideal, rng);
    if (best === undefined || tried.cost < best.cost) best = tried;
  }
  return best?.blocks ?? [];
}

function exchanged(
  blocks: number[][],
  v: number,
  ideal: number,
  rng: Rng,
): { blocks: number[][]; cost: number } {
  const meets = Array.from({ length: v * v }, () => 0);
  const at = (x: number, y: number): number => (x < y ? x * v + y : y * v + x);
  const move = (others: readonly number[], x: number, by: number): number =>
    others.reduce((grown, other) => {
      const cell = at(x, other);
      const was = meets[cell] ?? 0;
      meets[cell] = was + by;
      return grown + (was + by) ** 2 - was ** 2;
    }, 0);
  let cost = 0;
  for (const block of blocks) for (const [i, x] of block.entries()) cost += move(block.slice(0, i), x, 1);
  for (let swap = 0; swap < SWAPS && cost > ideal && blocks.length > 1; swap += 1) {
    const i = rng.below(blocks.length);
    const j = (i + 1 + rng.below(blocks.length - 1)) % blocks.length;
    const [one = [], two = []] = [blocks[i], blocks[j]];
    const x = one[rng.below(one.length)] ?? 0;
    const y = two[rng.below(two.length)] ?? 0;
    if (one.includes(y) || two.includes(x)) continue;
    const [restOne, restTwo] = [one.filter((thing) => thing !== x), two.filter((thing) => thing !== y)];
    const exchange = (a: number, c: number): number =>
      move(restOne, a, -1) + move(restTwo, c, -1) + move(restOne, c, 1) + move(restTwo, a, 1);
    const grown = exchange(x, y);
    if (grown > 0) exchange(y, x);
    else {
      cost += grown;
      blocks[i] = [...restOne, y];
      blocks[j] = [...restTwo, x];
    }
  }
  return { blocks, cost };
}
