import { polynomial } from "../numeric/index.ts";
import { A, B, C } from "./oiml-r22.data.ts";
import { shiftedByOne } from "./shifted-by-one.ts";

/** What dt^i is multiplied by, as polynomials: A itself for i = 0, then B_i followed by C_i. B_6 stands alone. */
const rows: readonly (readonly number[])[] = /* @__PURE__ */ [0, 1, 2, 3, 4, 5].map((i) =>
  i === 0 ? A : [B[i - 1] as number, ...(C[i - 1] ?? [])],
);
const B6 = B[5] as number;

/** Where the polynomials for dt, dt² … begin in the arrays below, which hold them one after the other. */
const R1 = 12;
const R2 = 24;
const R3 = 35;
const R4 = 45;
const R5 = 50;
const END = 53;

/** In powers of p. */
const WEAK = /* @__PURE__ */ Float64Array.from(rows.flat());

/**
 * In powers of p - 1, for mass fractions from one half on. Near p = 1 the powers of p nearly cancel and leave a rounding error of
 * 1e-9 kg/m³, too much for inverses within 1e-10 % vol; the powers of p - 1 leave 1e-12.
 */
const STRONG = /* @__PURE__ */ Float64Array.from(rows.flatMap((row) => [...shiftedByOne(row)]));

/** Where the two meet. */
export const MIDDLE = 0.5;

/** A coefficient. Written out once here, because every index below is inside its array. */
const of = (coefficients: Float64Array, k: number): number => coefficients[k] as number;

/**
 * The OIML R 22 general formula, kg/m³, with no check of its domain.
 *
 * The six polynomials are run side by side, not one after the other: the sums do not wait for each other, which takes less time
 * than the plain loop for the same 54 terms (`npm run bench`).
 */
export function densityFormula(p: number, t: number): number {
  const m = p < MIDDLE ? WEAK : STRONG;
  const x = p < MIDDLE ? p : p - 1;
  let a = of(m, 11);
  let b = of(m, R1 + 11);
  let c = of(m, R2 + 10);
  let d = of(m, R3 + 9);
  let e = of(m, R4 + 4);
  let f = of(m, R5 + 2);
  let k = 10;
  for (; k > 9; k--) {
    a = a * x + of(m, k);
    b = b * x + of(m, R1 + k);
  }
  for (; k > 8; k--) {
    a = a * x + of(m, k);
    b = b * x + of(m, R1 + k);
    c = c * x + of(m, R2 + k);
  }
  for (; k > 3; k--) {
    a = a * x + of(m, k);
    b = b * x + of(m, R1 + k);
    c = c * x + of(m, R2 + k);
    d = d * x + of(m, R3 + k);
  }
  for (; k > 1; k--) {
    a = a * x + of(m, k);
    b = b * x + of(m, R1 + k);
    c = c * x + of(m, R2 + k);
    d = d * x + of(m, R3 + k);
    e = e * x + of(m, R4 + k);
  }
  for (; k >= 0; k--) {
    a = a * x + of(m, k);
    b = b * x + of(m, R1 + k);
    c = c * x + of(m, R2 + k);
    d = d * x + of(m, R3 + k);
    e = e * x + of(m, R4 + k);
    f = f * x + of(m, R5 + k);
  }
  const dt = t - 20;
  return a + dt * (b + dt * (c + dt * (d + dt * (e + dt * (f + dt * B6)))));
}

/** The formula for one mixture as a polynomial in t - 20 °C, lowest power first. */
export function temperaturePolynomial(p: number): readonly number[] {
  const m = p < MIDDLE ? WEAK : STRONG;
  const x = p < MIDDLE ? p : p - 1;
  const ends = [0, R1, R2, R3, R4, R5, END];
  return [...ends.slice(1).map((end, i) => polynomial(m.subarray(ends[i], end), x)), B6];
}

const WEAK_AT_T = /* @__PURE__ */ new Float64Array(R1);
const STRONG_AT_T = /* @__PURE__ */ new Float64Array(R1);
const WEAK_AT_20 = /* @__PURE__ */ WEAK.slice(0, R1);
const STRONG_AT_20 = /* @__PURE__ */ STRONG.slice(0, R1);

/**
 * The formula at one temperature as a polynomial, lowest power first: in p below `MIDDLE`, in p - 1 from there on. Worth it for
 * two values or more. The arrays are the same ones every time and hold until the next call for that side.
 */
export function densityPolynomial(side: "weak" | "strong", t: number): Readonly<Float64Array> {
  const dt = t - 20;
  if (dt === 0) return side === "weak" ? WEAK_AT_20 : STRONG_AT_20;
  const m = side === "weak" ? WEAK : STRONG;
  const out = side === "weak" ? WEAK_AT_T : STRONG_AT_T;
  let k = 11;
  out[k] = of(m, k) + dt * of(m, R1 + k);
  k = 10;
  out[k] = of(m, k) + dt * (of(m, R1 + k) + dt * of(m, R2 + k));
  for (k = 9; k > 4; k--) {
    out[k] = of(m, k) + dt * (of(m, R1 + k) + dt * (of(m, R2 + k) + dt * of(m, R3 + k)));
  }
  for (; k > 2; k--) {
    const high = of(m, R3 + k) + dt * of(m, R4 + k);
    out[k] = of(m, k) + dt * (of(m, R1 + k) + dt * (of(m, R2 + k) + dt * high));
  }
  for (; k > 0; k--) {
    const high = of(m, R3 + k) + dt * (of(m, R4 + k) + dt * of(m, R5 + k));
    out[k] = of(m, k) + dt * (of(m, R1 + k) + dt * (of(m, R2 + k) + dt * high));
  }
  out[0] = atLowest(m, dt);
  return out;
}

/** Density of pure ethanol, kg/m³: `densityFormula` at p = 1, where only the lowest powers of p - 1 are left. */
export function ethanolDensity(t: number): number {
  return atLowest(STRONG, t - 20);
}

/** The formula where the powers of p, or of p - 1, are all 0. */
function atLowest(m: Float64Array, dt: number): number {
  const high = of(m, R3) + dt * (of(m, R4) + dt * (of(m, R5) + dt * B6));
  return of(m, 0) + dt * (of(m, R1) + dt * (of(m, R2) + dt * high));
}
