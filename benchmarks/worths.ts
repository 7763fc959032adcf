import {
  drawnRanking,
  plackettLuce,
  type Ranking,
  repeatableRng,
  shuffled,
} from "@partsproof/core/statistics";
import { middle } from "./middle.ts";

// The most likely worths of many items from rankings, beside plain gradient ascent to the same likelihood.

const BOUND_MS = 50;
/** How near the ascent must come to the largest log likelihood. */
const NEAR = 1e-6;

interface Shape {
  readonly name: string;
  readonly items: number;
  readonly rankings: number;
  /** Items in each ranking. */
  readonly each: number;
}
const shapes: readonly Shape[] = [
  { name: "87 items, 36 full rankings", items: 87, rankings: 36, each: 87 },
  { name: "83 items, 36 rankings of 43", items: 83, rankings: 36, each: 43 },
];

function drawn({ items, rankings, each }: Shape): number[][] {
  const rng = repeatableRng(64);
  const worths = Array.from({ length: items }, (_, i) => (i % 8) / 2.5);
  const all = [...worths.keys()];
  return Array.from({ length: rankings }, () => {
    const poured = shuffled(all, rng).slice(0, each);
    const ranks = drawnRanking(
      poured.map((item) => worths[item] ?? 0),
      rng,
    );
    return poured.toSorted((a, b) => (ranks[poured.indexOf(a)] ?? 0) - (ranks[poured.indexOf(b)] ?? 0));
  });
}

/** Log likelihood and gradient, as one would write them down. */
function slope(
  orders: readonly (readonly number[])[],
  x: readonly number[],
): { value: number; gradient: number[] } {
  const gradient = x.map(() => 0);
  let value = 0;
  for (const order of orders) {
    const worth = order.map((item) => Math.exp(x[item] ?? 0));
    const left = worth.slice();
    for (let at = left.length - 2; at >= 0; at -= 1) left[at] = (left[at] ?? 0) + (left[at + 1] ?? 0);
    let once = 0;
    for (const [at, item] of order.entries()) {
      once += 1 / (left[at] ?? 1);
      value += (x[item] ?? 0) - Math.log(left[at] ?? 1);
      gradient[item] = (gradient[item] ?? 0) + 1 - (worth[at] ?? 0) * once;
    }
  }
  return { value, gradient };
}

/** Steps along the gradient, twice as long after each that rose and halved until one does. */
function ascent(
  orders: readonly (readonly number[])[],
  items: number,
  top: number,
): { steps: number; short: number } {
  let x = Array.from({ length: items }, () => 0);
  let here = slope(orders, x);
  let length = 1 / orders.length;
  let steps = 0;
  while (top - here.value > NEAR && steps < 20_000) {
    steps += 1;
    const moved = x.map((v, i) => v + length * (here.gradient[i] ?? 0));
    const there = slope(orders, moved);
    if (there.value > here.value) [x, here, length] = [moved, there, 2 * length];
    else length /= 2;
  }
  return { steps, short: top - here.value };
}

/** @returns how many bounds were missed */
export function benchWorths(): number {
  console.log(
    "\n| most likely worths | ms (median of 9) | Newton steps | plain gradient ascent, ms | its steps | bound | |",
  );
  console.log("| --- | ---: | ---: | ---: | ---: | --- | --- |");
  let missed = 0;
  for (const shape of shapes) {
    const orders = drawn(shape);
    const rankings: readonly Ranking[] = orders.map((order) => order.map((item) => [item]));
    const times: number[] = [];
    let fit = plackettLuce(rankings, shape.items);
    for (let round = 0; round < 12; round += 1) {
      const from = performance.now();
      fit = plackettLuce(rankings, shape.items);
      if (round > 2) times.push(performance.now() - from);
    }
    if (!fit.ok) throw new Error(`${shape.name} requires worths that exist, got ${fit.code}`);
    const median = middle(times);
    const from = performance.now();
    const { steps, short } = ascent(orders, shape.items, fit.logLikelihood);
    const plain = performance.now() - from;
    const kept = median <= BOUND_MS;
    if (!kept) missed += 1;
    const far = short > NEAR ? `, ${short.toExponential(1)} short` : "";
    console.log(
      `| ${shape.name} | ${median.toFixed(1)} | ${fit.steps} | ${plain.toFixed(0)} | ${steps}${far} | <= ${BOUND_MS} ms | ${kept ? "kept" : "MISSED"} |`,
    );
  }
  return missed;
}
