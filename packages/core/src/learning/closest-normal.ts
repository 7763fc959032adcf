import { cholesky, dot, product, solveCholesky, solveUpper, type Square } from "../numeric/index.ts";
import { fillNormal, repeatableRng } from "../statistics/index.ts";
import type { TasteLikelihood } from "./taste-likelihood.ts";
import type { Whitened } from "./whitened.ts";

/** Frames of mirrored points over which slope and curvature are averaged; part of one of many log worths, whose law is nearer to normal. */
const FRAMES = 2;
const PAIRS_OF_MANY = 16;
const MANY = 60;
/** Rounds of it at most, and the step that ends them. */
const ROUNDS = 12;
const ROUNDS_OF_MANY = 3;
const SMALL = 5e-3;
const SMALL_TURN = 0.02;

/**
 * Points of frames at right angles, √size from the origin, turned at random: mirrored, every whole frame averages a cubic exactly.
 */
function squarePoints(size: number, wanted: number): Float64Array {
  const points = new Float64Array(wanted * size);
  fillNormal(points, repeatableRng(1));
  const row = (p: number): Float64Array => points.subarray(p * size, (p + 1) * size);
  for (let p = 0; p < wanted; p += 1) {
    const own = row(p);
    for (let before = p - (p % size); before < p; before += 1) {
      const other = row(before);
      const along = dot(own, other);
      for (let i = 0; i < size; i += 1) own[i] = (own[i] as number) - (along / size) * (other[i] as number);
    }
    const long = Math.sqrt(dot(own, own));
    for (let i = 0; i < size; i += 1) own[i] = ((own[i] as number) * Math.sqrt(size)) / long;
  }
  return points;
}

/** L·Lᵀ of a lower triangle. */
function squareOf(l: Square, n: number): Float64Array {
  const square = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const sum = product(l, i * n, l, j * n, j + 1);
      square[i * n + j] = sum;
      square[j * n + i] = sum;
    }
  return square;
}

/**
 * The normal law closest to a posterior, from the mode: slope and curvature averaged over the law itself instead of taken at its top.
 *
 * Source, from memory: Opper and Archambeau, Neural Comput. 21 (2009) 786 (mean slope 0, precision the mean curvature).
 */
export function closestNormal(
  likelihood: TasteLikelihood,
  whitened: Whitened,
  start: Float64Array,
  startFactor: Square,
): { readonly centre: Float64Array; readonly factor: Square } {
  const all = likelihood.size;
  const pairs = all > MANY ? PAIRS_OF_MANY : FRAMES * all;
  const points = squarePoints(all, pairs);
  let [centre, factor] = [start, startFactor];
  let precision = squareOf(factor, all);
  const rounds = all > MANY ? ROUNDS_OF_MANY : ROUNDS;
  for (let round = 0; round < rounds; round += 1) {
    const gradient = new Float64Array(all);
    const curvature = new Float64Array(all * all);
    for (let p = 0; p < pairs; p += 1) {
      const off = solveUpper(factor, points.subarray(p * all, (p + 1) * all));
      for (const sign of [1, -1]) {
        const there = whitened.at(centre.map((v, i) => v + sign * (off[i] as number)));
        likelihood.add(there, false, gradient, curvature);
      }
    }
    const averaged = (sums: Float64Array): Float64Array => sums.map((sum) => sum / (2 * pairs));
    const mean = whitened.carried(centre, averaged(gradient), averaged(curvature));
    // Half way, as whole steps swing to and fro where rankings say next to nothing against a wide prior.
    precision = precision.map((v, i) => (v + (mean.curvature[i] as number)) / 2);
    const next = cholesky(precision, all);
    if (next === null) break;
    const step = solveCholesky(next, mean.gradient);
    centre = centre.map((v, i) => v + (step[i] as number));
    const turned = factor.some((v, i) => Math.abs(v - (next[i] as number)) > SMALL_TURN);
    factor = next;
    if (!turned && step.every((v) => Math.abs(v) < SMALL)) break;
  }
  return { centre, factor };
}
