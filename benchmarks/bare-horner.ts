import { A, B, C } from "../packages/core/src/alcoholometry/oiml-r22.data.ts";

/** The 54 terms of OIML R 22 by Horner's rule, no checks and nothing clever: what the arithmetic alone costs. */
export function bareHorner(p: number, t: number): number {
  const dt = t - 20;
  let density = 0;
  for (let k = A.length - 1; k >= 0; k--) density = density * p + (A[k] as number);
  let rest = 0;
  for (let i = B.length - 1; i >= 0; i--) {
    let cross = 0;
    const row = C[i];
    if (row !== undefined) for (let k = row.length - 1; k >= 0; k--) cross = cross * p + (row[k] as number);
    rest = (rest + (B[i] as number) + cross * p) * dt;
  }
  return density + rest;
}
