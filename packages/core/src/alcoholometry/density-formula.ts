import { polynomial } from "../numeric/index.ts";
import { A, B, C } from "./oiml-r22.data.ts";

/** What dt^i is multiplied by, in powers of p from 0: A itself for i = 0, then B_i followed by C_i. B_6 stands alone. */
const row = (i: number): Float64Array => Float64Array.of(B[i - 1] as number, ...(C[i - 1] ?? []));
const R0 = /* @__PURE__ */ Float64Array.from(A);
const R1 = /* @__PURE__ */ row(1);
const R2 = /* @__PURE__ */ row(2);
const R3 = /* @__PURE__ */ row(3);
const R4 = /* @__PURE__ */ row(4);
const R5 = /* @__PURE__ */ row(5);
const B6 = B[5] as number;

/** A term of a row. Written out once here, because every index below is inside its row. */
const of = (coefficients: Float64Array, k: number): number => coefficients[k] as number;

/**
 * The OIML R 22 general formula, kg/m³, with no check of its domain.
 *
 * The rows are run side by side, not one after the other: the six sums do not wait for each other, which takes less than half
 * the time of the plain loop for the same 54 terms (`npm run bench`).
 */
export function densityFormula(p: number, t: number): number {
  let a = of(R0, 11);
  let b = of(R1, 11);
  let c = of(R2, 10);
  let d = of(R3, 9);
  let e = of(R4, 4);
  let f = of(R5, 2);
  let k = 10;
  for (; k > 9; k--) {
    a = a * p + of(R0, k);
    b = b * p + of(R1, k);
  }
  for (; k > 8; k--) {
    a = a * p + of(R0, k);
    b = b * p + of(R1, k);
    c = c * p + of(R2, k);
  }
  for (; k > 3; k--) {
    a = a * p + of(R0, k);
    b = b * p + of(R1, k);
    c = c * p + of(R2, k);
    d = d * p + of(R3, k);
  }
  for (; k > 1; k--) {
    a = a * p + of(R0, k);
    b = b * p + of(R1, k);
    c = c * p + of(R2, k);
    d = d * p + of(R3, k);
    e = e * p + of(R4, k);
  }
  for (; k >= 0; k--) {
    a = a * p + of(R0, k);
    b = b * p + of(R1, k);
    c = c * p + of(R2, k);
    d = d * p + of(R3, k);
    e = e * p + of(R4, k);
    f = f * p + of(R5, k);
  }
  const dt = t - 20;
  return a + dt * (b + dt * (c + dt * (d + dt * (e + dt * (f + dt * B6)))));
}

const AT_T = /* @__PURE__ */ new Float64Array(A.length);

/**
 * The formula at one temperature as a polynomial in p, lowest power first; `densityFormula` is its value within rounding.
 * Worth it for two values or more. The array is the same one every time and holds until the next call.
 */
export function densityPolynomial(t: number): Readonly<Float64Array> {
  const dt = t - 20;
  if (dt === 0) return R0;
  const out = AT_T;
  let k = 11;
  out[k] = of(R0, k) + dt * of(R1, k);
  k = 10;
  out[k] = of(R0, k) + dt * (of(R1, k) + dt * of(R2, k));
  for (k = 9; k > 4; k--) {
    out[k] = of(R0, k) + dt * (of(R1, k) + dt * (of(R2, k) + dt * of(R3, k)));
  }
  for (; k > 2; k--) {
    out[k] = of(R0, k) + dt * (of(R1, k) + dt * (of(R2, k) + dt * (of(R3, k) + dt * of(R4, k))));
  }
  for (; k >= 0; k--) {
    const high = of(R4, k) + dt * (of(R5, k) + (k === 0 ? dt * B6 : 0));
    out[k] = of(R0, k) + dt * (of(R1, k) + dt * (of(R2, k) + dt * (of(R3, k) + dt * high)));
  }
  return out;
}

/** The formula for one mixture as a polynomial in t - 20 °C, lowest power first. */
export function temperaturePolynomial(p: number): readonly number[] {
  return [...[R0, R1, R2, R3, R4, R5].map((coefficients) => polynomial(coefficients, p)), B6];
}
