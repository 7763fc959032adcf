import type { RankedSet } from "./ranked-set.ts";

/**
 * The log likelihood of rankings without ties, quick enough to be asked thousands of times: Σ of the appeals picked, less Σ ln of
 * what there was to pick from. Sums are multiplied before a logarithm is taken, and e is raised to a parameter that stands
 * alone once for all rankings.
 */
export function quickValue(rankings: readonly RankedSet[], parameters: number): (x: Float64Array) => number {
  // Rankings made equally often share a logarithm.
  const sets = rankings.toSorted((a, b) => a.times - b.times);
  const picked = new Float64Array(parameters);
  const places: number[] = [];
  const starts = [0];
  const mixed: { readonly at: number; readonly parameter: number; readonly coefficient: number }[] = [];
  let slots = parameters;
  for (const { appeals, times } of sets) {
    appeals.forEach((appeal, i) => {
      const [only] = appeal;
      if (i < appeals.length - 1) {
        for (const [parameter, c] of appeal) picked[parameter] = (picked[parameter] as number) + times * c;
      }
      if (only !== undefined && appeal.length === 1 && only[1] === 1) {
        places.push(only[0]);
        return;
      }
      for (const [parameter, coefficient] of appeal) mixed.push({ at: slots, parameter, coefficient });
      places.push(slots);
      slots += 1;
    });
    starts.push(places.length);
  }
  const at = Int32Array.from(mixed, (term) => term.at);
  const parameter = Int32Array.from(mixed, (term) => term.parameter);
  const coefficient = Float64Array.from(mixed, (term) => term.coefficient);
  const [from, place] = [Int32Array.from(starts), Int32Array.from(places)];
  const times = Float64Array.from(sets, (set) => set.times);
  const worth = new Float64Array(slots);
  return (x) => {
    let value = 0;
    for (let p = 0; p < parameters; p += 1) {
      worth[p] = x[p] as number;
      value += (picked[p] as number) * (x[p] as number);
    }
    worth.fill(0, parameters);
    for (let t = 0; t < at.length; t += 1) {
      const slot = at[t] as number;
      worth[slot] =
        (worth[slot] as number) + (coefficient[t] as number) * (x[parameter[t] as number] as number);
    }
    // All appeals may be shifted together: the largest becomes 1, and what was shifted comes back once a pick.
    let top = -Infinity;
    for (let s = 0; s < slots; s += 1) top = Math.max(top, worth[s] as number);
    for (let s = 0; s < slots; s += 1) worth[s] = Math.exp((worth[s] as number) - top);
    let product = 1;
    for (let set = 0; set < times.length; set += 1) {
      const [first, last] = [from[set] as number, (from[set + 1] as number) - 1];
      const often = times[set] as number;
      let left = worth[place[last] as number] as number;
      for (let i = last - 1; i >= first; i -= 1) {
        left += worth[place[i] as number] as number;
        product *= left;
        if (product < 1e-200 || product > 1e200) {
          value -= often * Math.log(product);
          product = 1;
        }
      }
      value -= often * (last - first) * top;
      if (times[set + 1] !== often) {
        value -= often * Math.log(product);
        product = 1;
      }
    }
    return value;
  };
}
