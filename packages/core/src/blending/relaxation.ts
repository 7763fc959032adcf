/** The least length of a mean of the shelf with any shares at all that keep the rows. */
export type Relaxation = {
  /** Proven: no mean that keeps the rows is shorter than this. Infinite when none can keep them. */
  readonly bound: number;
  /** Scalar product of each whiskey's offset with the short mean that was found, and that mean's length. */
  readonly along: Float64Array;
  readonly length: number;
  /** Multiples of the rows added up, by part: its sum over any recipe that keeps the rules is 0 or more. */
  readonly tilt: Float64Array;
};

const STEPS = 400;
const ROUNDS = 12;

/** A squared length with the rows pulled in: the state of the minimisation. */
class Descent {
  readonly share: Float64Array;
  readonly along: Float64Array;
  readonly kept: Float64Array;
  readonly pull: Float64Array;
  readonly #n: number;
  /** Scalar products by share, row by row. */
  readonly #gram: Float64Array;
  readonly #rows: readonly Float64Array[];
  #stiffness = 1;

  constructor(n: number, gram: Float64Array, rows: readonly Float64Array[]) {
    this.#n = n;
    this.#gram = gram;
    this.#rows = rows;
    this.share = new Float64Array(n);
    this.kept = new Float64Array(rows.length);
    this.pull = new Float64Array(rows.length);
    let start = 0;
    for (let i = 1; i < n; i += 1) if (gram[i * n + i]! < gram[start * n + start]!) start = i;
    this.share[start] = 1;
    this.along = gram.slice(start * n, start * n + n);
    for (const [r, row] of rows.entries()) this.kept[r] = row[start]!;
  }

  #pulls(): Float64Array {
    return this.pull.map((pull, r) => Math.max(0, pull - this.#stiffness * this.kept[r]!));
  }

  /** Moves share from the worst whiskey in use to the best on the shelf until that gains next to nothing. */
  settle(): void {
    const n = this.#n;
    const gram = this.#gram;
    const { share, along, kept } = this;
    const rows = this.#rows;
    for (let step = 0; step < STEPS; step += 1) {
      const pulls = rows.length > 0 ? this.#pulls() : this.pull;
      let best = 0;
      let worst = -1;
      let least = Infinity;
      let greatest = -Infinity;
      for (let i = 0; i < n; i += 1) {
        let slope = 2 * along[i]!;
        for (let r = 0; r < pulls.length; r += 1) slope -= pulls[r]! * rows[r]![i]!;
        if (slope < least) {
          least = slope;
          best = i;
        }
        if (share[i]! > 0 && slope > greatest) {
          greatest = slope;
          worst = i;
        }
      }
      if (!(greatest - least > 1e-6 * (1 + Math.abs(least)))) return;
      const rowB = best * n;
      const rowW = worst * n;
      let curve = 2 * (gram[rowB + best]! + gram[rowW + worst]! - 2 * gram[rowB + worst]!);
      for (const row of rows) curve += this.#stiffness * (row[best]! - row[worst]!) ** 2;
      const moved = Math.min(share[worst]!, curve > 0 ? (greatest - least) / curve : 1);
      share[best]! += moved;
      share[worst] = moved === share[worst] ? 0 : share[worst]! - moved;
      for (let i = 0; i < n; i += 1) along[i]! += moved * (gram[rowB + i]! - gram[rowW + i]!);
      for (const [r, row] of rows.entries()) kept[r]! += moved * (row[best]! - row[worst]!);
    }
  }

  /** Takes the pulls of the rows over, and pulls harder from now on. */
  stiffen(): void {
    this.pull.set(this.#pulls());
    this.#stiffness *= 3;
  }
}

/** Scalar products of parts as those of shares. */
function byShare(gram: Float64Array, each: Float64Array, n: number): Float64Array {
  if (each.every((one) => one === 1)) return gram;
  const shares = new Float64Array(n * n);
  for (let i = 0, at = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1, at += 1) shares[at] = gram[at]! / (each[i]! * each[j]!);
  return shares;
}

/**
 * Least squares over the simplex by pairwise Frank-Wolfe steps (Lacoste-Julien and Jaggi, NIPS 2015), the rows kept by multipliers
 * (method of multipliers, Hestenes 1969). It stops near the optimum, and the bound holds wherever it stops: for a mean v of the
 * offsets u and any multiples of rows that sum to m, every mean that keeps the rows is at least min(u.v - m / 2) / |v| long.
 *
 * @param gram scalar products of n offsets by part, row by row; dividing by `each` makes them those of shares
 * @param rows by part, at least 0 in sum over a recipe that keeps the rules
 */
export function relaxation(
  gram: Float64Array,
  each: Float64Array,
  n: number,
  rows: readonly Float64Array[],
): Relaxation {
  const tilt = new Float64Array(n);
  if (n === 0) return { bound: Infinity, along: tilt, length: 0, tilt };
  const scaled = rows.map((row) => {
    const shares = row.map((value, i) => value / each[i]!);
    const size = shares.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    return shares.map((value) => value / size);
  });
  const descent = new Descent(n, byShare(gram, each, n), scaled);
  descent.settle();
  for (let round = 0; round < ROUNDS && rows.length > 0; round += 1) {
    descent.stiffen();
    descent.settle();
  }
  descent.stiffen();
  const { along, share, pull } = descent;
  let square = 0;
  let least = Infinity;
  let kindest = -Infinity;
  for (let i = 0; i < n; i += 1) {
    let m = 0;
    for (let r = 0; r < scaled.length; r += 1) m += pull[r]! * scaled[r]![i]!;
    tilt[i] = m * each[i]!;
    kindest = Math.max(kindest, m);
    square += share[i]! * along[i]!;
    least = Math.min(least, along[i]! - m / 2);
  }
  const length = Math.sqrt(Math.max(0, square));
  // Multiples of the rows that are below 0 for every whiskey: no recipe can make their sum 0 (Farkas).
  if (kindest < -1e-9) return { bound: Infinity, along, length, tilt };
  return { bound: length > 1e-9 ? Math.max(0, least / length - 1e-9) : 0, along, length, tilt };
}
