import type { Objective } from "./objective.ts";

export type Measured = {
  readonly distance: number;
  readonly score: number;
  readonly predicted: readonly number[];
};

/**
 * Distance, score and predicted intensities of a recipe by their definition. `support` must be in the shelf's order, so that a
 * recipe has one value to the last bit.
 */
export function measure(
  objective: Objective,
  support: ArrayLike<number>,
  parts: ArrayLike<number>,
): Measured {
  const { weight, exponent, target, powers, spread, each, goal, absolute } = objective;
  const d = weight.length;
  let all = 0;
  for (let x = 0; x < support.length; x += 1) all += parts[x]! * each[support[x]!]!;
  const shares: number[] = [];
  for (let x = 0; x < support.length; x += 1) shares.push((parts[x]! * each[support[x]!]!) / all);
  const predicted: number[] = [];
  let sum = 0;
  for (let a = 0; a < d; a += 1) {
    const strongest = exponent[a] === Infinity;
    let mixed = 0;
    for (let x = 0; x < support.length; x += 1) {
      const power = powers[support[x]! * d + a]!;
      mixed = strongest ? Math.max(mixed, power) : mixed + shares[x]! * power;
    }
    const m = exponent[a] === 1 || strongest ? mixed : mixed ** (1 / exponent[a]!);
    predicted.push(m);
    const off = m - target[a]!;
    sum += weight[a]! * (absolute ? Math.abs(off) : off * off);
  }
  let goals = 0;
  for (let x = 0; x < support.length; x += 1) {
    sum += shares[x]! * shares[x]! * spread[support[x]!]!;
    goals += shares[x]! * goal[support[x]!]!;
  }
  const distance = absolute ? sum : Math.sqrt(sum);
  return { distance, score: distance + goals, predicted };
}
