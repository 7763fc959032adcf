import type { Square } from "../numeric/index.ts";
import type { Rng } from "../statistics/index.ts";
import { dispersion, form, information, logDeterminant, sandwiched } from "./information.ts";

/** What is asked of a set of runs. D: coefficients as sure as can be, together. I: predictions over the region as sure as can be, on average. */
export type Criterion = "D" | "I";

export interface ExchangeProblem {
  readonly criterion: Criterion;
  /** Model terms of every mixture that may be chosen. */
  readonly rows: readonly Float64Array[];
  /** Of runs that were made already. */
  readonly known: readonly Float64Array[];
  readonly runs: number;
  /** Mean of f f' over the region: what I is averaged with. */
  readonly moments: Square;
}

export interface Chosen {
  /** Places in `rows`, one a run. */
  readonly chosen: number[];
  readonly logDeterminant: number;
  /** Mean variance of a prediction over the region, for a noise of 1. */
  readonly meanVariance: number;
}

const PASSES = 60;
const WORTH_IT = 1e-9;

/**
 * Runs by exchange: from a random start each run is exchanged for the candidate that helps most, run after run, until none helps
 * (Fedorov 1972, modified as in Cook and Nachtsheim 1980), from several starts; the best is kept.
 */
export function exchange(problem: ExchangeProblem, starts: number, rng: Rng): Chosen | null {
  let best: Chosen | null = null;
  for (let n = 0; n < starts; n += 1) {
    const found = fromOneStart(problem, rng);
    if (found !== null && (best === null || better(problem.criterion, found, best))) best = found;
  }
  return best;
}

const better = (criterion: Criterion, a: Chosen, b: Chosen): boolean =>
  criterion === "D"
    ? a.logDeterminant > b.logDeterminant + WORTH_IT
    : a.meanVariance < b.meanVariance - WORTH_IT;

function fromOneStart(problem: ExchangeProblem, rng: Rng): Chosen | null {
  const { rows, runs, criterion } = problem;
  const p = rows[0]?.length ?? 0;
  const chosen = Array.from({ length: runs }, () => rng.below(rows.length));
  for (let pass = 0; pass < PASSES; pass += 1) {
    let moved = false;
    for (const place of chosen.keys()) {
      const m = information([...problem.known, ...chosen.map((k) => rows[k] as Float64Array)], p);
      const s = dispersion(ridged(m, p), p);
      if (s === null) return null;
      const to = bestFor(problem, s, chosen[place] as number, criterion);
      if (to === null) continue;
      chosen[place] = to;
      moved = true;
    }
    if (!moved) break;
  }
  const found = measure(
    [...problem.known, ...chosen.map((k) => rows[k] as Float64Array)],
    problem.moments,
    p,
  );
  return Number.isFinite(found.logDeterminant) ? { chosen, ...found } : null;
}

/** Both criteria of a set of runs; −Infinity and Infinity where it does not tell the terms apart. */
export function measure(
  rows: readonly Float64Array[],
  moments: Square,
  p: number,
): { readonly logDeterminant: number; readonly meanVariance: number } {
  const m = information(rows, p);
  const s = dispersion(m, p);
  if (s === null) return { logDeterminant: -Infinity, meanVariance: Infinity };
  return { logDeterminant: logDeterminant(m, p), meanVariance: sandwiched(s, moments, p).trace };
}

/** A start may leave terms untold; the least ridge lets the exchange climb out. */
function ridged(m: Square, p: number): Square {
  const r = Float64Array.from(m);
  for (let i = 0; i < p; i += 1) r[i * p + i] = (r[i * p + i] as number) + 1e-9;
  return r;
}

/** The candidate that helps most in place of one run; null where none does. */
function bestFor(
  { rows, moments }: ExchangeProblem,
  s: Square,
  from: number,
  criterion: Criterion,
): number | null {
  const out = rows[from] as Float64Array;
  const p = out.length;
  const outOut = form(s, out, out);
  const sOut = times(s, out);
  const averaged = criterion === "I" ? sandwiched(s, moments, p) : null;
  let [to, most]: [number | null, number] = [null, WORTH_IT];
  for (const [k, row] of rows.entries()) {
    const inIn = form(s, row, row);
    const outIn = dot(sOut, row);
    // Determinant's factor when `row` comes and `out` goes (Fedorov's delta).
    const factor = (1 + inIn) * (1 - outOut) + outIn ** 2;
    const gain = averaged === null ? factor - 1 : fall(averaged.sws, row, out, inIn, outOut, outIn, factor);
    if (gain > most) [to, most] = [k, gain];
  }
  return to;
}

/** By how much the mean variance falls: the trace of W times the change of the inverse, a correction of rank two (Woodbury). */
function fall(
  sws: Square,
  row: Float64Array,
  out: Float64Array,
  inIn: number,
  outOut: number,
  outIn: number,
  factor: number,
): number {
  if (!(factor > 1e-12)) return -1;
  const [a, b, c] = [form(sws, row, row), form(sws, row, out), form(sws, out, out)];
  // (M + row row' − out out')⁻¹ = S − S U K⁻¹ U' S with U = [row, out], K = [[1 + inIn, outIn], [outIn, outOut − 1]], det K = −factor.
  return ((outOut - 1) * a - 2 * outIn * b + (1 + inIn) * c) / -factor;
}

function times(s: Square, a: Float64Array): Float64Array {
  const p = a.length;
  return Float64Array.from({ length: p }, (_, i) => {
    let sum = 0;
    for (let j = 0; j < p; j += 1) sum += (s[i * p + j] as number) * (a[j] as number);
    return sum;
  });
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
