import type { Tiers } from "./ranking-moves.ts";

/** What a taster said of two glasses: which of them is ahead, or that they are level. */
export interface PairAnswer {
  readonly pair: readonly [string, string];
  /** One of the two, or "level". */
  readonly ahead: string;
}

export type PairState =
  | { readonly state: "ask"; readonly pair: readonly [string, string] }
  | { readonly state: "done"; readonly tiers: Tiers };

/**
 * The next two glasses to compare, or the whole ranking, best first. Merge insertion (Ford and Johnson 1959; Knuth, The Art of
 * Computer Programming 3, 5.3.1), which up to 11 glasses asks no more than any method must. It asks nothing that follows from
 * what was said already, so two answers never contradict each other. Level counts as an order while it sorts, either would do,
 * and puts the two on one place at the end: neighbours in the finished order have always been compared.
 */
export function pairState(codes: readonly string[], answers: readonly PairAnswer[]): PairState {
  const said = new Map(answers.map(({ pair, ahead }) => [pairKey(...pair), ahead]));
  const sorting = insertByMerging(codes);
  let step = sorting.next();
  while (step.done !== true) {
    const [a, b] = step.value;
    const ahead = said.get(pairKey(a, b));
    if (ahead === undefined) return { state: "ask", pair: step.value };
    step = sorting.next(ahead !== "level" ? ahead === a : a < b);
  }
  return { state: "done", tiers: tiersOf(step.value, said) };
}

/** The most questions that so many glasses take: the sum of ceil(log2(3k/4)) for k from 2. */
export function mostPairQuestions(glasses: number): number {
  let sum = 0;
  for (let k = 2; k <= glasses; k += 1) sum += Math.ceil(Math.log2((3 * k) / 4));
  return sum;
}

const pairKey = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

type Sorting = Generator<readonly [string, string], readonly string[], boolean>;

/** Best first. Yields two glasses, and is told whether the first of them is ahead. */
function* insertByMerging(codes: readonly string[]): Sorting {
  if (codes.length < 2) return codes;
  const behind = new Map<string, string>();
  const ahead: string[] = [];
  for (let i = 0; i + 1 < codes.length; i += 2) {
    const [a = "", b = ""] = codes.slice(i, i + 2);
    const first = yield [a, b];
    ahead.push(first ? a : b);
    behind.set(first ? a : b, first ? b : a);
  }
  // Worst first from here, as the books have it: each of `big` has a smaller one that is still to be placed.
  const big = (yield* insertByMerging(ahead)).toReversed();
  const small: string[] = big.map((code) => behind.get(code) ?? "");
  if (codes.length % 2 === 1) small.push(codes.at(-1) ?? "");
  const chain = [small[0] ?? "", ...big];
  for (const at of insertionOrder(small.length)) {
    const code = small[at] ?? "";
    const partner = big[at];
    let [low, high] = [0, partner === undefined ? chain.length : chain.indexOf(partner)];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (yield [code, chain[middle] ?? ""]) low = middle + 1;
      else high = middle;
    }
    chain.splice(low, 0, code);
  }
  return chain.toReversed();
}

/** 2, 1, 4, 3, 10, … 5, …: each group as large as its binary search leaves no comparison unused. The first is placed already. */
function insertionOrder(count: number): readonly number[] {
  const order: number[] = [];
  for (let from = 1, to = 3, power = 4; from < count; power *= 2) {
    for (let at = Math.min(to, count) - 1; at >= from; at -= 1) order.push(at);
    [from, to] = [to, 2 * power - to];
  }
  return order;
}

/** Neighbours that were called level share a place, unless one of those on it was said to be ahead of another. */
function tiersOf(order: readonly string[], said: ReadonlyMap<string, string>): Tiers {
  const tiers: string[][] = [];
  for (const code of order) {
    const tier = tiers.at(-1) ?? [];
    const last = tier.at(-1);
    const level = last !== undefined && said.get(pairKey(last, code)) === "level";
    const parted = tier.some((one) => (said.get(pairKey(one, code)) ?? "level") !== "level");
    if (level && !parted) tier.push(code);
    else tiers.push([code]);
  }
  return tiers;
}
