import { leastSquares } from "../numeric/index.ts";
import type { Interval } from "./interval.ts";
import { studentHalfWidth } from "./student-and-f-laws.ts";

/** One mixture: shares of the components, adding up to 1, and what was measured of it. */
export interface MixtureRun {
  readonly x: readonly number[];
  readonly y: number;
}

export type MixtureModel = "linear" | "quadratic" | "special-cubic";

export type MixtureFit =
  | {
      readonly ok: true;
      /** By term: "a", "a:b", "a:b:c". */
      readonly coefficients: Readonly<Record<string, number>>;
      readonly standardErrors: Readonly<Record<string, number>>;
      /** Residual standard deviation. */
      readonly sigma: number;
      readonly terms: number;
      /** Runs less terms. */
      readonly df: number;
      /** Share of the variation about the mean that the model explains; null when every y is the same. */
      readonly rSquared: number | null;
      /** What the model expects of a mixture, with the interval of that expectation. */
      expected(x: readonly number[], level?: number): { readonly value: number; readonly interval: Interval };
    }
  /** Too few different mixtures to tell the terms apart, or as many terms as runs. */
  | {
      readonly ok: false;
      readonly code: "terms_not_separable" | "no_degrees_left";
      readonly terms: number;
      readonly runs: number;
      /** With as many terms as runs they go through every point and nothing says how far off they are; null with fewer runs. */
      readonly coefficients: Readonly<Record<string, number>> | null;
    };

/** How far shares may be from adding up to 1: thirds written as 0.33, used as they stand. */
const SHARE_SLIP = 0.015;

/** The terms of a model, as lists of components: the order of `mixtureFit`. */
export function mixtureTerms(model: MixtureModel, components: number): number[][] {
  const terms = Array.from({ length: components }, (_, i) => [i]);
  if (model === "linear") return terms;
  for (let i = 0; i < components; i += 1) for (let j = i + 1; j < components; j += 1) terms.push([i, j]);
  if (model === "quadratic") return terms;
  for (let i = 0; i < components; i += 1) {
    for (let j = i + 1; j < components; j += 1) {
      for (let k = j + 1; k < components; k += 1) terms.push([i, j, k]);
    }
  }
  return terms;
}

/**
 * Scheffé's mixture polynomial by least squares: what a mixture is expected to give, from its shares.
 *
 * No intercept (the shares add up to 1). Standard errors and sigma from the residual degrees of freedom, runs − terms; R² about the
 * mean, as is usual for mixtures.
 *
 * Accuracy: relative 1e-10. Source: Scheffé, J. R. Stat. Soc. B 20 (1958) 344; Cornell, Experiments with Mixtures (from memory).
 *
 * @throws RangeError when a run has other components, a share is negative, shares don't add up to 1 (to `SHARE_SLIP`), or a y is not finite
 * @example mixtureFit(["x1", "x2"], [{ x: [1, 0], y: 11 }, { x: [0, 1], y: 9 }, { x: [0.5, 0.5], y: 12 }], "linear")
 */
export function mixtureFit(
  components: readonly string[],
  runs: readonly MixtureRun[],
  model: MixtureModel,
): MixtureFit {
  if (components.length < 2 || new Set(components).size !== components.length) {
    throw new RangeError(
      `mixtureFit requires 2 components or more with different names, got [${components.join(", ")}]`,
    );
  }
  runs.forEach(({ x, y }, i) => {
    const sum = x.reduce((total, share) => total + share, 0);
    if (
      x.length !== components.length ||
      !x.every((share) => share >= 0) ||
      !(Math.abs(sum - 1) <= SHARE_SLIP)
    ) {
      throw new RangeError(
        `mixtureFit requires ${components.length} shares >= 0 that add up to 1 in run ${i}, got [${x.join(", ")}]`,
      );
    }
    if (!Number.isFinite(y)) throw new RangeError(`mixtureFit requires a finite y in run ${i}, got ${y}`);
  });
  const terms = mixtureTerms(model, components.length);
  const row = (x: readonly number[]): number[] =>
    terms.map((term) => term.reduce((product, i) => product * (x[i] as number), 1));
  const df = runs.length - terms.length;
  const none = { ok: false, terms: terms.length, runs: runs.length } as const;
  const names = terms.map((term) => term.map((i) => components[i]).join(":"));
  const named = (value: (i: number) => number): Record<string, number> =>
    Object.fromEntries(names.map((name, i) => [name, value(i)]));
  if (df < 0) return { ...none, code: "no_degrees_left", coefficients: null };
  const y = runs.map((run) => run.y);
  const fit = leastSquares(
    runs.map(({ x }) => row(x)),
    y,
  );
  if (fit === null) return { ...none, code: "terms_not_separable", coefficients: null };
  const coefficients = named((i) => fit.coefficients[i] as number);
  if (df === 0) return { ...none, code: "no_degrees_left", coefficients };
  const mean = y.reduce((sum, v) => sum + v, 0) / y.length;
  const total = y.reduce((sum, v) => sum + (v - mean) ** 2, 0);
  const sigma = Math.sqrt(fit.residual / df);
  return {
    ok: true,
    coefficients,
    standardErrors: named((i) => sigma * Math.sqrt(fit.inverse[i]?.[i] as number)),
    sigma,
    terms: terms.length,
    df,
    rSquared: total === 0 ? null : 1 - fit.residual / total,
    expected(x, level = 0.95) {
      const at = row(x);
      const value = at.reduce((sum, v, i) => sum + v * (fit.coefficients[i] as number), 0);
      const spread = at.reduce(
        (sum, v, i) => sum + v * at.reduce((part, w, j) => part + w * (fit.inverse[i]?.[j] as number), 0),
        0,
      );
      const half = studentHalfWidth(level, df) * sigma * Math.sqrt(Math.max(0, spread));
      return { value, interval: { low: value - half, high: value + half } };
    },
  };
}
