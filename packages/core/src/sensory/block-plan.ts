import { type Rng, shuffled } from "../statistics/index.ts";
import { balancedBlocks } from "./balanced-blocks.ts";
import { type BlockBalance, blockBalance } from "./block-balance.ts";
import { evenTurns } from "./even-turns.ts";
import { nearBalancedBlocks } from "./near-balanced-blocks.ts";

export interface BlockPlan extends BlockBalance {
  /** One row a serving (one taster, one sitting): the whiskeys 0 … v − 1 in the order they are met. */
  readonly orders: readonly (readonly number[])[];
  /** Servings of the balanced design on file, of which any multiple is balanced; null when none is on file. */
  readonly balancedFrom: number | null;
  /** Whether every two whiskeys meet equally often and each is served equally often. */
  readonly balanced: boolean;
  readonly said: readonly string[];
}

const evenly = ([fewest, most]: readonly [number, number]): string =>
  fewest === most ? `${most}` : `${fewest} to ${most}`;

function words(plan: Omit<BlockPlan, "said">, v: number): string[] {
  const { balanced, servings, meetings, balancedFrom, connected, positionImbalance } = plan;
  const b = plan.orders.length;
  const said = [
    `Each whiskey is served ${evenly(servings)} times, and any two meet in ${evenly(meetings)} servings.`,
  ];
  if (balanced) said.push("That is balanced: every two are compared equally well.");
  else if (balancedFrom === null) {
    said.push("No balanced plan of this size is on file, so some pairs are compared less well than others.");
  } else {
    const next = Math.ceil(b / balancedFrom) * balancedFrom;
    said.push(
      `It is not balanced: some pairs are compared less well than others. ${next} servings would be.`,
    );
  }
  if (!connected) said.push(`Some of the ${v} whiskeys cannot be compared at all, not even through others.`);
  if (positionImbalance > 1) {
    said.push(`At a turn one whiskey stands up to ${positionImbalance} times more often than another.`);
  }
  return said;
}

/**
 * Servings when there are more whiskeys than a palate takes: each taster, each sitting, gets k of v. Balanced when the number
 * of servings is a multiple of a balanced design on file; otherwise whole designs as far as they go and the rest as even as a
 * search finds, with the imbalance measured and said.
 *
 * Balance over turns within incomplete servings: the aim of Wakeling and MacFie, Food Quality and Preference 6 (1995) 299,
 * from memory; the search here is our own.
 *
 * @throws RangeError unless 2 <= k < v, 3 <= v <= 16, 1 to 400 servings, all whole
 * @example blockPlan({ whiskeys: 7, glasses: 3, servings: 7, rng }).balanced // true
 */
export function blockPlan(ask: {
  readonly whiskeys: number;
  readonly glasses: number;
  readonly servings: number;
  readonly rng: Rng;
}): BlockPlan {
  const { whiskeys: v, glasses: k, servings: b, rng } = ask;
  const design = balancedBlocks(v, k);
  if (!Number.isInteger(b) || b < 1 || b > 400) {
    throw new RangeError(`blockPlan requires a whole 1 to 400 servings, got ${b}`);
  }
  const relabelled = (blocks: readonly (readonly number[])[]): number[][] => {
    const labels = shuffled([...Array(v).keys()], rng);
    return blocks.map((block) => block.map((thing) => labels[thing] ?? thing));
  };
  const whole = design === null ? 0 : Math.floor(b / design.length);
  const rest = b - whole * (design?.length ?? 0);
  const blocks = [
    ...Array.from({ length: whole }, () => relabelled(design ?? [])).flat(),
    ...(rest === 0 ? [] : nearBalancedBlocks(v, k, rest, rng)),
  ];
  const servings = evenTurns(shuffled(blocks, rng), v, rng);
  const balance = blockBalance(servings, v);
  const even = ([fewest, most]: readonly [number, number]): boolean => fewest === most;
  const plan = {
    ...balance,
    orders: servings,
    balancedFrom: design?.length ?? null,
    balanced: even(balance.servings) && even(balance.meetings),
  };
  return { ...plan, said: words(plan, v) };
}
