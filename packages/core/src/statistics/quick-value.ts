import type { RankedSet } from "./ranked-set.ts";

/** Rankings laid out flat: slots of appeals, where each ranking and each of its groups begins. */
interface Layout {
  /** Coefficients of the parameters in what was picked, tie parameters last. */
  readonly picked: Float64Array;
  readonly slots: number;
  /** Sums of several terms, or with other coefficients than 1: which slot, which parameter, how much. */
  readonly at: Int32Array;
  readonly parameter: Int32Array;
  readonly coefficient: Float64Array;
  /** Slot of each place of each ranking, in order; `opens` is 1 where a group that left a choice begins. */
  readonly place: Int32Array;
  readonly opens: Uint8Array;
  readonly starts: Int32Array;
  readonly times: Float64Array;
}

function laidOut(sets: readonly RankedSet[], parameters: number, ties: readonly number[]): Layout {
  const picked = new Float64Array(parameters + ties.length);
  const [place, opens, starts]: [number[], number[], number[]] = [[], [], [0]];
  const mixed: (readonly [slot: number, parameter: number, coefficient: number])[] = [];
  let slots = parameters;
  const pick = (parameter: number, amount: number): void => {
    picked[parameter] = (picked[parameter] as number) + amount;
  };
  for (const { appeals, sizes, times } of sets) {
    let from = 0;
    for (const size of sizes) {
      const choice = appeals.length - from > 1;
      if (choice && size > 1) pick(parameters + ties.indexOf(size), times);
      for (const [i, appeal] of appeals.slice(from, from + size).entries()) {
        opens.push(Number(choice && i === 0));
        if (choice) for (const [parameter, c] of appeal) pick(parameter, (times * c) / size);
        const [only] = appeal;
        if (only !== undefined && appeal.length === 1 && only[1] === 1) {
          place.push(only[0]);
          continue;
        }
        for (const [parameter, c] of appeal) mixed.push([slots, parameter, c]);
        place.push(slots);
        slots += 1;
      }
      from += size;
    }
    starts.push(place.length);
  }
  return {
    picked,
    slots,
    at: Int32Array.from(mixed, ([slot]) => slot),
    parameter: Int32Array.from(mixed, ([, parameter]) => parameter),
    coefficient: Float64Array.from(mixed, ([, , c]) => c),
    place: Int32Array.from(place),
    opens: Uint8Array.from(opens),
    starts: Int32Array.from(starts),
    times: Float64Array.from(sets, (set) => set.times),
  };
}

/**
 * The log likelihood of rankings, quick enough to be asked thousands of times: Σ of the appeals picked, less Σ ln of what there was
 * to pick from. Sums are multiplied before a logarithm is taken, and e is raised to a parameter that stands alone once for all
 * rankings.
 */
export function quickValue(
  rankings: readonly RankedSet[],
  parameters: number,
  ties: readonly number[],
): (x: Float64Array) => number {
  // Rankings made equally often share a logarithm.
  const sets = rankings.toSorted((a, b) => a.times - b.times);
  const { picked, slots, at, parameter, coefficient, place, opens, starts, times } = laidOut(
    sets,
    parameters,
    ties,
  );
  const appeal = new Float64Array(slots);
  const worth = new Float64Array(slots);
  const sorts = ties.length;
  // Of each slot one root a size of tie: what one place needs stands together.
  const roots = new Float64Array(slots * sorts);
  const delta = new Float64Array(sorts);
  // Elementary symmetric polynomials of those left, for each size of tie e_0 to e_size, one after the other; where each begins and ends.
  const begins = Int32Array.from(ties, (_, o) => ties.slice(0, o).reduce((sum, size) => sum + size + 1, 0));
  const ends = begins.map((begin, o) => begin + (ties[o] as number));
  const left = new Float64Array(ties.reduce((sum, size) => sum + size + 1, 0));
  return (x) => {
    let value = 0;
    for (let p = 0; p < picked.length; p += 1) value += (picked[p] as number) * (x[p] as number);
    for (let p = 0; p < parameters; p += 1) appeal[p] = x[p] as number;
    appeal.fill(0, parameters);
    for (let t = 0; t < at.length; t += 1) {
      const slot = at[t] as number;
      appeal[slot] =
        (appeal[slot] as number) + (coefficient[t] as number) * (x[parameter[t] as number] as number);
    }
    // All appeals may be shifted together: the largest worth becomes 1, and what was shifted comes back once a pick.
    let top = -Infinity;
    for (let s = 0; s < slots; s += 1) top = Math.max(top, appeal[s] as number);
    for (let s = 0; s < slots; s += 1) worth[s] = Math.exp((appeal[s] as number) - top);
    for (const [o, size] of ties.entries()) {
      delta[o] = Math.exp(x[parameters + o] as number);
      for (let s = 0; s < slots; s += 1)
        roots[s * sorts + o] = Math.exp(((appeal[s] as number) - top) / size);
    }
    let product = 1;
    for (let set = 0; set < times.length; set += 1) {
      const often = times[set] as number;
      let single = 0;
      left.fill(0);
      for (let o = 0; o < sorts; o += 1) left[begins[o] as number] = 1;
      let choices = 0;
      for (let i = (starts[set + 1] as number) - 1; i >= (starts[set] as number); i -= 1) {
        const slot = place[i] as number;
        single += worth[slot] as number;
        for (let o = 0; o < sorts; o += 1) {
          const root = roots[slot * sorts + o] as number;
          const begin = begins[o] as number;
          for (let t = ends[o] as number; t > begin; t -= 1)
            left[t] = (left[t] as number) + root * (left[t - 1] as number);
        }
        if (opens[i] === 0) continue;
        let all = single;
        for (let o = 0; o < sorts; o += 1) all += (delta[o] as number) * (left[ends[o] as number] as number);
        choices += 1;
        product *= all;
        if (product < 1e-200 || product > 1e200) {
          value -= often * Math.log(product);
          product = 1;
        }
      }
      value -= often * choices * top;
      if (times[set + 1] !== often) {
        value -= often * Math.log(product);
        product = 1;
      }
    }
    return value;
  };
}
