interface Rule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

const POINTS = 20;

/** Nodes and weights of the Gauss-Legendre rule on [-1, 1]: Newton's method on the Legendre polynomial. */
function gaussLegendre(n: number): Rule {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 1; i <= n; i += 1) {
    let x = Math.cos((Math.PI * (i - 0.25)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 10; step += 1) {
      let [before, here] = [1, x];
      for (let k = 2; k <= n; k += 1)
        [before, here] = [here, ((2 * k - 1) * x * here - (k - 1) * before) / k];
      slope = (n * (x * here - before)) / (x * x - 1);
      x -= here / slope;
    }
    nodes.push(x);
    weights.push(2 / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}

const rule = gaussLegendre(POINTS);

/**
 * The integral of a smooth `f` from `low` to `high`: Gauss-Legendre with 20 points on each of `panels` equal panels.
 *
 * Exact for polynomials up to degree 39 on a panel; for products of normal densities and tails, panels of width 2 (in
 * standard deviations) or less leave an error of some 1e-15. Not for functions with a kink or a pole inside a panel.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.30 (from memory).
 *
 * @throws RangeError unless both ends are finite and `panels` is whole and 1 or more
 * @example integrate(Math.exp, 0, 1, 1) // 1.718281828459045, e - 1
 */
export function integrate(f: (x: number) => number, low: number, high: number, panels: number): number {
  if (!Number.isFinite(low) || !Number.isFinite(high)) {
    throw new RangeError(`integrate requires finite ends, got ${low} and ${high}`);
  }
  if (!Number.isInteger(panels) || panels < 1) {
    throw new RangeError(`integrate requires 1 panel or more, got ${panels}`);
  }
  const half = (high - low) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = low + (2 * panel + 1) * half;
    for (let i = 0; i < POINTS; i += 1) {
      sum += (rule.weights[i] as number) * f(middle + half * (rule.nodes[i] as number));
    }
  }
  return sum * half;
}
