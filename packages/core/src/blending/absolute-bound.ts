/**
 * A lower bound of the absolute distance of every mean of some offsets, goals added: for signs s from -1 to 1, sum |v| is at least
 * v.s, so no mean scores below min(u(i).s + goal(i)). Signs are looked for by smoothing |v| and moving share from the worst to the
 * best (Frank-Wolfe, as in `relaxation`); the best bound met is given, wherever that stops.
 */
export class AbsoluteBound {
  readonly #d: number;
  readonly #offsets: Float64Array;
  readonly #goal: Float64Array;
  readonly #mean: Float64Array;
  readonly #signs: Float64Array;
  readonly #share: Float64Array;
  readonly #value: Float64Array;
  /** The signs that gave the last bound. */
  readonly best: Float64Array;

  constructor(offsets: Float64Array, goal: Float64Array, d: number) {
    this.#d = d;
    this.#offsets = offsets;
    this.#goal = goal;
    this.#mean = new Float64Array(d);
    this.#signs = new Float64Array(d);
    this.best = new Float64Array(d);
    this.#share = new Float64Array(goal.length);
    this.#value = new Float64Array(goal.length);
  }

  /** The least score a whiskey can bring a mean down to along `signs`. */
  along(signs: Float64Array, i: number): number {
    let sum = this.#goal[i]!;
    for (let a = 0, at = i * this.#d; a < this.#d; a += 1, at += 1) sum += signs[a]! * this.#offsets[at]!;
    return sum;
  }

  /**
   * The bound for means of the whiskeys at `places` in which each has at least the share `least`; stops once it is above `enough`.
   */
  of(places: ArrayLike<number>, least: number, enough: number, steps: number): number {
    const size = places.length;
    const d = this.#d;
    const mean = this.#mean.fill(0);
    const signs = this.#signs;
    const share = this.#share;
    const value = this.#value;
    for (let x = 0; x < size; x += 1) {
      share[x] = 1 / size;
      for (let a = 0, at = places[x]! * d; a < d; a += 1, at += 1) mean[a]! += this.#offsets[at]! / size;
    }
    let bound = -Infinity;
    for (let step = 0; step < steps; step += 1) {
      let length = 0;
      for (let a = 0; a < d; a += 1) length += Math.abs(mean[a]!);
      const soft = (0.5 * length) / d + 1e-12;
      for (let a = 0; a < d; a += 1) signs[a] = Math.max(-1, Math.min(1, mean[a]! / soft));
      let low = 0;
      let high = -1;
      let sum = 0;
      for (let x = 0; x < size; x += 1) {
        value[x] = this.along(signs, places[x]!);
        sum += value[x]!;
        if (value[x]! < value[low]!) low = x;
        if (share[x]! > 0 && (high < 0 || value[x]! > value[high]!)) high = x;
      }
      const reached = least * sum + (1 - size * least) * value[low]!;
      if (reached > bound) {
        bound = reached;
        this.best.set(signs);
      }
      const gain = value[high]! - value[low]!;
      if (bound > enough || !(gain > 1e-12)) break;
      // The smoothed sum bends by 1 / soft: the step that would be best there.
      let curve = 0;
      const up = places[low]! * d;
      const down = places[high]! * d;
      for (let a = 0; a < d; a += 1)
        if (Math.abs(mean[a]!) < soft)
          curve += (this.#offsets[up + a]! - this.#offsets[down + a]!) ** 2 / soft;
      const moved = Math.min(share[high]!, curve > 0 ? gain / curve : share[high]!);
      share[low]! += moved;
      share[high]! -= moved;
      for (let a = 0; a < d; a += 1) mean[a]! += moved * (this.#offsets[up + a]! - this.#offsets[down + a]!);
    }
    return bound;
  }
}
