import type { Concave } from "../numeric/index.ts";
import { type Appeal, type RankedSet, tieSizes } from "./ranked-set.ts";
import { ofRanking, type Sums } from "./ranking-sums.ts";
import { quickValue } from "./quick-value.ts";

export interface RankingLikelihood extends Concave {
  /** Adds gradient and curvature (of as many columns as the gradient is long, its own parameters first); the value comes back. */
  add(x: Float64Array, gradient: Float64Array, curvature: Float64Array): number;
}

/**
 * The log likelihood of rankings with ties, of any part of the items, as a concave function of `parameters` appeal parameters and
 * then one ln δ for every size of tie that occurs.
 *
 * Model: at every stage a group S of those left is picked with a chance proportional to δ_|S|·exp(mean appeal of S), δ_1 = 1; sizes
 * that never occur are left out (their δ is 0). Without ties it is Plackett and Luce's; two items, Davidson's, δ_2 his ν.
 *
 * @throws RangeError when a tie is of a size that is not in `ties`
 * Sources, from memory: Plackett, Appl. Stat. 24 (1975) 193; Luce 1959; Davidson, J. Am. Stat. Assoc. 65 (1970) 317; Firth,
 * Kosmidis and Turner, "Davidson-Luce model for multi-item choice with ties", arXiv:1909.07123 (2019).
 */
export function rankingLogLikelihood(
  rankings: readonly RankedSet[],
  parameters: number,
  ties: readonly number[] = tieSizes(rankings),
): RankingLikelihood {
  const missing = tieSizes(rankings).find((tie) => !ties.includes(tie));
  if (missing !== undefined) {
    throw new RangeError(
      `rankingLogLikelihood requires the sizes of all ties, got [${ties.join(", ")}] without ${missing}`,
    );
  }
  const size = parameters + ties.length;
  const sets = merged(rankings).map((set) => ({ ...set, plain: plainPlaces(set.appeals) }));
  const tieAppeals: Appeal[] = ties.map((_, i) => [[parameters + i, 1]]);
  const add: RankingLikelihood["add"] = (x, gradient, curvature) => {
    const logTies = x.subarray(parameters, size);
    let value = 0;
    for (const set of sets) {
      if (set.plain !== null && ties.length === 0) {
        value += addPlain(set.plain, set.times, x, gradient, curvature);
        continue;
      }
      const part = ofRanking(appealsOf(set.appeals, x), set.sizes, ties, logTies, true);
      value += set.times * part.value;
      addMixed([...set.appeals, ...tieAppeals], set.times, part, gradient, curvature);
    }
    return value;
  };
  return {
    size,
    value: quickValue(sets, parameters, ties),
    add,
    curve(x) {
      const gradient = new Float64Array(size);
      const curvature = new Float64Array(size * size);
      const value = add(x, gradient, curvature);
      return { value, gradient, curvature };
    },
  };
}

/** Equal rankings put together. */
function merged(rankings: readonly RankedSet[]): RankedSet[] {
  const found = new Map<string, RankedSet>();
  for (const set of rankings) {
    const key = `${set.sizes.join()}|${set.appeals.map((appeal) => appeal.flat().join()).join(";")}`;
    const same = found.get(key);
    found.set(key, same === undefined ? set : { ...same, times: same.times + set.times });
  }
  return [...found.values()];
}

function appealsOf(appeals: readonly Appeal[], x: Float64Array): Float64Array {
  const sums = new Float64Array(appeals.length);
  appeals.forEach((appeal, i) => {
    let sum = 0;
    for (const [parameter, coefficient] of appeal) sum += coefficient * (x[parameter] as number);
    sums[i] = sum;
  });
  return sums;
}

/** The parameter of each appeal where each is one parameter as it is, else null. */
function plainPlaces(appeals: readonly Appeal[]): Int32Array | null {
  const places = new Int32Array(appeals.length);
  for (const [i, [only, ...more]] of appeals.entries()) {
    if (only === undefined || more.length > 0 || only[1] !== 1) return null;
    places[i] = only[0];
  }
  return places;
}

/** The same sums as `ofRanking` makes without ties, straight into where they go: for many items that is most of the work. */
function addPlain(
  places: Int32Array,
  times: number,
  x: Float64Array,
  gradient: Float64Array,
  curvature: Float64Array,
): number {
  const [n, size] = [places.length, gradient.length];
  let top = -Infinity;
  for (let i = 0; i < n; i += 1) top = Math.max(top, x[places[i] as number] as number);
  const worth = new Float64Array(n);
  const left = new Float64Array(n);
  let sum = 0;
  for (let i = n - 1; i >= 0; i -= 1) {
    worth[i] = Math.exp((x[places[i] as number] as number) - top);
    left[i] = sum += worth[i] as number;
  }
  let [value, once, twice] = [0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    const p = places[i] as number;
    const own = worth[i] as number;
    if (i < n - 1) {
      const here = left[i] as number;
      value += (x[p] as number) - top - Math.log(here);
      once += 1 / here;
      twice += 1 / (here * here);
      gradient[p] = (gradient[p] as number) + times;
    }
    gradient[p] = (gradient[p] as number) - times * own * once;
    curvature[p * size + p] = (curvature[p * size + p] as number) + times * own * (once - own * twice);
    const both = times * own * twice;
    for (let j = i + 1; j < n; j += 1) {
      const q = places[j] as number;
      const term = both * (worth[j] as number);
      curvature[p * size + q] = (curvature[p * size + q] as number) - term;
      curvature[q * size + p] = (curvature[q * size + p] as number) - term;
    }
  }
  return times * value;
}

function addMixed(
  rows: readonly Appeal[],
  times: number,
  part: Sums,
  gradient: Float64Array,
  curvature: Float64Array,
): void {
  const size = gradient.length;
  rows.forEach((row, i) => {
    for (const [p, c] of row) {
      gradient[p] = (gradient[p] as number) + times * c * (part.gradient[i] as number);
      rows.forEach((other, j) => {
        const term = times * c * (part.curvature[i * rows.length + j] as number);
        if (term === 0) return;
        for (const [q, d] of other) curvature[p * size + q] = (curvature[p * size + q] as number) + term * d;
      });
    }
  });
}
