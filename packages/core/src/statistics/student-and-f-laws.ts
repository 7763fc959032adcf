import { rootByBrent } from "../numeric/index.ts";
import { betaQuantile, betaTail } from "./beta-law.ts";

function requireDegrees(what: string, ...degrees: number[]): void {
  const bad = degrees.find((df) => !(df > 0));
  if (bad !== undefined) throw new RangeError(`${what} requires degrees of freedom > 0, got ${bad}`);
}

/**
 * P(F >= f) for the F law of df1 and df2 degrees of freedom.
 *
 * Accuracy: relative 1e-11 (that of `betaTail`).
 *
 * @throws RangeError unless f >= 0 and both degrees are above 0
 * @example fUpperTail(5.143252849784718, 2, 6) // 0.05
 */
export function fUpperTail(f: number, df1: number, df2: number): number {
  requireDegrees("fUpperTail", df1, df2);
  if (!(f >= 0)) throw new RangeError(`fUpperTail requires f >= 0, got ${f}`);
  if (f === Infinity) return 0;
  // Of the two complementary arguments the smaller keeps its digits.
  const share = df2 / (df2 + df1 * f);
  return share < 0.5
    ? betaTail(share, df2 / 2, df1 / 2, "lower")
    : betaTail((df1 * f) / (df2 + df1 * f), df1 / 2, df2 / 2, "upper");
}

/**
 * The f with P(F <= f) = p.
 *
 * @throws RangeError unless 0 < p < 1
 * @example fQuantile(0.95, 2, 6) // 5.143252849784718
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  requireDegrees("fQuantile", df1, df2);
  if (!(p > 0 && p < 1)) throw new RangeError(`fQuantile requires 0 < p < 1, got ${p}`);
  // The lower end of the other argument keeps its digits where f is large.
  const share = betaQuantile(1 - p, df2 / 2, df1 / 2);
  return (df2 * (1 - share)) / (df1 * share);
}

/** P(|T| >= |t|), two-sided, for Student's law. */
export const studentTwoSided = (t: number, df: number): number => fUpperTail(t * t, 1, df);

/**
 * The t with P(|T| <= t) = level for Student's law: the half-width of a two-sided interval in standard errors.
 *
 * @throws RangeError unless 0 < level < 1
 * @example studentHalfWidth(0.95, 5) // 2.570581835636314
 */
export function studentHalfWidth(level: number, df: number): number {
  requireDegrees("studentHalfWidth", df);
  if (!(level > 0 && level < 1)) {
    throw new RangeError(`studentHalfWidth requires 0 < level < 1, got ${level}`);
  }
  const far = (t: number): number => studentTwoSided(t, df) - (1 - level);
  let high = 2;
  while (far(high) > 0) high *= 4;
  return rootByBrent(far, 0, high);
}
