/** Takes one more number into elementary symmetric polynomials e_0 … e_most. */
function take(e: Float64Array, x: number): void {
  for (let t = e.length - 1; t >= 1; t -= 1) e[t] = (e[t] as number) + x * (e[t - 1] as number);
}

/** Elementary symmetric polynomials of x up to `most`: of what comes before each place, of what comes after, and of all. */
interface Symmetric {
  readonly before: readonly Float64Array[];
  readonly after: readonly Float64Array[];
  readonly all: Float64Array;
}

function symmetric(x: Float64Array, most: number): Symmetric {
  const growing = (order: Iterable<number>): { at: Float64Array[]; all: Float64Array } => {
    const e = new Float64Array(most + 1);
    e[0] = 1;
    const at: Float64Array[] = [];
    for (const i of order) {
      at[i] = e.slice();
      take(e, x[i] as number);
    }
    return { at, all: e };
  };
  const { at: before, all } = growing(x.keys());
  return { before, after: growing([...x.keys()].toReversed()).at, all };
}

/** e_t of two lots of numbers together. */
function together(a: Float64Array, b: Float64Array, t: number): number {
  let sum = 0;
  for (let k = 0; k <= t; k += 1) sum += (a[k] as number) * (b[t - k] as number);
  return sum;
}

/** Adds to what is wanted of the log likelihood of one ranking, as a function of the appeals and the logs of the tie parameters. */
export interface Sums {
  value: number;
  gradient: Float64Array;
  /** Minus the second derivatives; items first, then ties. */
  curvature: Float64Array;
}

/** Plackett and Luce's model without ties: every stage picks one of those left. */
function withoutTies(appeal: Float64Array, deep: boolean): Sums {
  const n = appeal.length;
  const gradient = new Float64Array(deep ? n : 0);
  const curvature = new Float64Array(deep ? n * n : 0);
  const top = appeal.reduce((most, x) => Math.max(most, x), -Infinity);
  const worth = appeal.map((x) => Math.exp(x - top));
  const left = new Float64Array(n);
  let sum = 0;
  for (let i = n - 1; i >= 0; i -= 1) left[i] = sum += worth[i] as number;
  let value = 0;
  let [once, twice] = [0, 0];
  for (let i = 0; i < n; i += 1) {
    const here = left[i] as number;
    if (i < n - 1) {
      value += (appeal[i] as number) - top - Math.log(here);
      once += 1 / here;
      twice += 1 / (here * here);
    }
    if (!deep) continue;
    const own = worth[i] as number;
    gradient[i] = (i < n - 1 ? 1 : 0) - own * once;
    curvature[i * n + i] = own * once - own * own * twice;
    for (let j = i + 1; j < n; j += 1) {
      curvature[i * n + j] = curvature[j * n + i] = -own * (worth[j] as number) * twice;
    }
  }
  return { value, gradient, curvature };
}

/** One stage of Davidson and Luce's model: a group of the items from `from` on is picked, of any of the sizes that occur. */
function addStage(
  appeal: Float64Array,
  from: number,
  size: number,
  ties: readonly number[],
  logTies: Float64Array,
  sums: Sums,
  deep: boolean,
): void {
  const n = appeal.length;
  const rest = appeal.subarray(from);
  const r = rest.length;
  const orders = [1, ...ties.filter((t) => t <= r)];
  if (r === 1) return;
  const top = rest.reduce((most, x) => Math.max(most, x), -Infinity);
  const scaled = orders.map((t) => rest.map((x) => Math.exp((x - top) / t)));
  const weight = orders.map((t) => (t === 1 ? 1 : Math.exp(logTies[ties.indexOf(t)] as number)));
  const symmetrics = orders.map((t, o) => symmetric(scaled[o] as Float64Array, t));
  const whole = orders.map((t, o) => symmetrics[o]?.all[t] as number);
  const z = whole.reduce((sum, e, o) => sum + (weight[o] as number) * e, 0);
  for (let i = 0; i < size; i += 1) sums.value += ((rest[i] as number) - top) / size;
  if (size > 1) sums.value += logTies[ties.indexOf(size)] as number;
  sums.value -= Math.log(z);
  if (!deep) return;
  const all = n + ties.length;
  const mean = new Float64Array(all);
  const square = sums.curvature;
  for (let i = 0; i < size; i += 1) sums.gradient[from + i] = (sums.gradient[from + i] as number) + 1 / size;
  if (size > 1) {
    const place = n + ties.indexOf(size);
    sums.gradient[place] = (sums.gradient[place] as number) + 1;
  }
  const add = (i: number, j: number, x: number): void => {
    square[i * all + j] = (square[i * all + j] as number) + x;
    if (i !== j) square[j * all + i] = (square[j * all + i] as number) + x;
  };
  orders.forEach((t, o) => {
    const x = scaled[o] as Float64Array;
    const { before, after } = symmetrics[o] as Symmetric;
    const share = (weight[o] as number) / z;
    const place = t === 1 ? -1 : n + ties.indexOf(t);
    if (place >= 0) {
      const p = share * (whole[o] as number);
      mean[place] = p;
      add(place, place, p);
    }
    for (let i = 0; i < r; i += 1) {
      const picked =
        share * (x[i] as number) * together(before[i] as Float64Array, after[i] as Float64Array, t - 1);
      mean[from + i] = (mean[from + i] as number) + picked / t;
      add(from + i, from + i, picked / (t * t));
      if (place >= 0) add(from + i, place, picked / t);
      if (t === 1) continue;
      // What comes before j, without i.
      const between = (before[i] as Float64Array).slice();
      for (let j = i + 1; j < r; j += 1) {
        const both = t === 2 ? 1 : together(between, after[j] as Float64Array, t - 2);
        take(between, x[j] as number);
        add(from + i, from + j, (share * (x[i] as number) * (x[j] as number) * both) / (t * t));
      }
    }
  });
  for (let i = 0; i < all; i += 1) {
    const own = mean[i] as number;
    if (own === 0) continue;
    sums.gradient[i] = (sums.gradient[i] as number) - own;
    for (let j = 0; j < all; j += 1)
      square[i * all + j] = (square[i * all + j] as number) - own * (mean[j] as number);
  }
}

/** What one ranking adds to the log likelihood; gradient and curvature where `deep`. */
export function ofRanking(
  appeal: Float64Array,
  sizes: readonly number[],
  ties: readonly number[],
  logTies: Float64Array,
  deep: boolean,
): Sums {
  if (ties.length === 0) return withoutTies(appeal, deep);
  const all = appeal.length + ties.length;
  const sums: Sums = {
    value: 0,
    gradient: new Float64Array(deep ? all : 0),
    curvature: new Float64Array(deep ? all * all : 0),
  };
  let from = 0;
  for (const size of sizes) {
    addStage(appeal, from, size, ties, logTies, sums, deep);
    from += size;
  }
  return sums;
}
