import { type MixtureModel, mixtureTerms, repeatableRng } from "../statistics/index.ts";
import { candidates } from "./candidates.ts";
import { designRow } from "./design-row.ts";
import { type Criterion, exchange, measure } from "./exchange.ts";
import { information, logDeterminant } from "./information.ts";
import { polish } from "./polish.ts";
import type { Bound } from "./region.ts";

/** Where every search starts: asked twice, the same plan. */
const START = 8;
const STARTS = 12;

export interface RunsWanted {
  readonly criterion: Criterion;
  readonly model: MixtureModel;
  readonly bounds: readonly Bound[];
  /** How many to choose, known runs not counted. */
  readonly runs: number;
  /** Mixtures that were made already: they count, and are not chosen again without need. */
  readonly known?: readonly (readonly number[])[];
}

export interface RunsChosen {
  readonly runs: number[][];
  /** Natural log of the determinant of X'X, known runs with it. */
  readonly logDeterminant: number;
  /** Mean variance of a prediction over the region, for a noise of 1 in a single judgement. */
  readonly meanVariance: number;
}

/**
 * The few mixtures that tell most about a model: D- or I-optimal by exchange.
 *
 * Domain: 2 to 8 parts, bounds that leave a region; with the known runs at least as many as the model has terms. Accuracy: at least 0.98
 * of the best D-efficiency known for quadratic and special cubic models of 3 and 4 parts, with and without bounds
 * (`choose-runs.ref.test.ts`); no proof that nothing better exists. Source: Fedorov 1972; Cook and Nachtsheim 1980; region and
 * pseudo-components as in Cornell (all from memory). Cost: about 50 ms for 3 parts, 500 ms for 4.
 *
 * @throws RangeError outside the domain; null where no set of runs tells the terms apart
 * @example
 * chooseRuns({ criterion: "D", model: "quadratic", bounds: [{ low: 0, high: 1 }, { low: 0, high: 1 }], runs: 3 })?.runs
 */
export function chooseRuns({ criterion, model, bounds, runs, known = [] }: RunsWanted): RunsChosen | null {
  const offered = candidates(bounds);
  const p = mixtureTerms(model, bounds.length).length;
  if (!(Number.isInteger(runs) && runs >= 1 && runs + known.length >= p))
    throw new RangeError(`${p} terms require ${p} runs or more, got ${runs} and ${known.length} known`);
  const rows = offered.map((shares) => designRow(model, shares));
  const moments = information(rows, p).map((sum) => sum / rows.length);
  const found = exchange(
    { criterion, rows, known: known.map((shares) => designRow(model, shares)), runs, moments },
    STARTS,
    repeatableRng(START),
  );
  if (found === null) return null;
  const before = known.map((shares) => designRow(model, shares));
  const measured = (chosen: readonly (readonly number[])[]) =>
    measure([...before, ...chosen.map((shares) => designRow(model, shares))], moments, p);
  const moved = polish(
    found.chosen.map((k) => offered[k] as number[]),
    bounds,
    (chosen) => {
      const { logDeterminant: log, meanVariance } = measured(chosen);
      return criterion === "D" ? log : -meanVariance;
    },
  );
  return { runs: moved, ...measured(moved) };
}

/** The log of the determinant of any set of mixtures, to hold against another; −Infinity where it tells the terms not apart. */
export function logDeterminantOf(model: MixtureModel, runs: readonly (readonly number[])[]): number {
  const p = mixtureTerms(model, runs[0]?.length ?? 0).length;
  return logDeterminant(
    information(
      runs.map((shares) => designRow(model, shares)),
      p,
    ),
    p,
  );
}
