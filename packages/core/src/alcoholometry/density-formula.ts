import { A, B, C } from "./oiml-r22.data.ts";

/** Value by Horner's rule; the lowest power comes first. */
function polynomial(c: readonly number[], x: number): number {
  let y = 0;
  for (let k = c.length - 1; k >= 0; k--) y = y * x + (c[k] as number);
  return y;
}

/** Derivative by Horner's rule; the lowest power comes first. */
function slope(c: readonly number[], x: number): number {
  let y = 0;
  for (let k = c.length - 1; k >= 1; k--) y = y * x + k * (c[k] as number);
  return y;
}

/** The OIML R 22 general formula, kg/m³, with no check of its domain. */
export function densityFormula(p: number, t: number): number {
  const dt = t - 20;
  const at20 = polynomial(A, p);
  if (dt === 0) return at20;
  let y = 0;
  for (let k = B.length - 1; k >= 0; k--) {
    const cross = C[k];
    y = (y + (B[k] as number) + (cross === undefined ? 0 : p * polynomial(cross, p))) * dt;
  }
  return at20 + y;
}

/** The derivative of the formula by mass fraction, kg/m³ per unit of p, with no check of its domain. */
export function densitySlopeFormula(p: number, t: number): number {
  const dt = t - 20;
  const at20 = slope(A, p);
  if (dt === 0) return at20;
  let y = 0;
  for (let k = C.length - 1; k >= 0; k--) {
    const cross = C[k] as readonly number[];
    y = (y + polynomial(cross, p) + p * slope(cross, p)) * dt;
  }
  return at20 + y;
}
