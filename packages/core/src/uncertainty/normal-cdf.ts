import { chiSquareUpperTail } from "../statistics/index.ts";

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/** P(Z <= z) for the standard normal law, both tails kept to their digits. */
export function normalCdf(z: number): number {
  const tail = Math.abs(z) > 38 ? 0 : chiSquareUpperTail(z * z, 1) / 2;
  return z > 0 ? 1 - tail : tail;
}

/** The integral of `normalCdf` from minus infinity to z: z Phi(z) + phi(z). */
export function normalCdfIntegral(z: number): number {
  return z * normalCdf(z) + Math.exp((-z * z) / 2) / ROOT_TWO_PI;
}
