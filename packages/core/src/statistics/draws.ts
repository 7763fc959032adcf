import type { Rng } from "./rng.ts";

/** A draw from the even law between 0 and 1, both left out. */
export const evenDraw = (rng: Rng): number => (rng.below(2 ** 32) + 0.5) / 2 ** 32;

/** Fills an array with independent standard normal draws (Box and Muller, Ann. Math. Stat. 29 (1958) 610). */
export function fillNormal(into: Float64Array, rng: Rng): void {
  for (let i = 0; i < into.length; i += 2) {
    const radius = Math.sqrt(-2 * Math.log(evenDraw(rng)));
    const turn = 2 * Math.PI * evenDraw(rng);
    into[i] = radius * Math.cos(turn);
    if (i + 1 < into.length) into[i + 1] = radius * Math.sin(turn);
  }
}

/** A draw from the chi-square law with an even number of degrees of freedom. */
export function evenChiSquareDraw(df: number, rng: Rng): number {
  let sum = 0;
  for (let i = 0; i < df; i += 2) sum -= 2 * Math.log(evenDraw(rng));
  return sum;
}
