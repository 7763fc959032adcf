import { cholesky, type Concave, solveCholesky, type Square } from "../numeric/index.ts";

/** One judge's log likelihood, of its own parameters: `common[i]` is what parameter i is of all, the first `own` of them shifted by the judge. */
export interface JudgePart {
  readonly f: Concave;
  readonly common: readonly number[];
  readonly own: number;
}

export interface JudgedMode {
  readonly common: Float64Array;
  /** `shifts[j]`: of the judge's own parameters. */
  readonly shifts: readonly Float64Array[];
  /** Cholesky factor of the precision of the common parameters, shifts averaged over. */
  readonly factor: Square;
  /** ln of the probability of the data, by Laplace's approximation. */
  readonly logEvidence: number;
}

const STEPS = 60;

interface State {
  readonly common: Float64Array;
  readonly shifts: readonly Float64Array[];
}

const at = ({ common, own }: JudgePart, state: State, judge: number): Float64Array =>
  Float64Array.from(
    common,
    (c, i) => (state.common[c] as number) + (i < own ? ((state.shifts[judge] as Float64Array)[i] ?? 0) : 0),
  );

/**
 * The mode of parameters common to all judges and of each judge's normal shifts of some of them, by Newton's method with the shifts
 * taken out judge by judge, so that a hundred judges cost a hundred times one.
 *
 * @param sd of every shift; 0: no shifts
 * @throws RangeError when a part is not concave
 */
export function judgedMode(
  parts: readonly JudgePart[],
  prior: { readonly mean: readonly number[]; readonly sd: readonly number[] },
  sd: number,
): JudgedMode {
  const n = prior.mean.length;
  const shifted = (own: number): number => (sd === 0 ? 0 : own);
  let state: State = {
    common: Float64Array.from(prior.mean),
    shifts: parts.map(({ own }) => new Float64Array(shifted(own))),
  };
  const valueOf = (where: State): number => {
    let value = parts.reduce((sum, part, j) => sum + part.f.value(at(part, where, j)), 0);
    where.common.forEach((x, i) => {
      value -= ((x - (prior.mean[i] as number)) / (prior.sd[i] as number)) ** 2 / 2;
    });
    if (sd > 0) for (const shift of where.shifts) for (const x of shift) value -= (x / sd) ** 2 / 2;
    return value;
  };
  let value = valueOf(state);
  for (let step = 0; ; step += 1) {
    const { move, moves, factor, logDet, gain } = newtonStep(parts, prior, sd, state, n);
    if (gain < 1e-9 || step === STEPS) {
      const scale = prior.sd.reduce((sum, s) => sum + Math.log(s), 0);
      const own = parts.reduce((sum, part) => sum + shifted(part.own), 0);
      const logEvidence = value - scale - (own === 0 ? 0 : own * Math.log(sd)) - logDet / 2;
      return { ...state, factor, logEvidence };
    }
    // The whole step unless it goes too far; on a concave function a short enough one always gains.
    let share = 1;
    for (;;) {
      const from: State = state;
      const next: State = {
        common: from.common.map((x, i) => x + share * (move[i] as number)),
        shifts: from.shifts.map((shift, j) =>
          shift.map((x, i) => x + share * ((moves[j] as Float64Array)[i] as number)),
        ),
      };
      const reached = valueOf(next);
      if (reached >= value || share < 1e-6) {
        state = next;
        value = reached;
        break;
      }
      share /= 2;
    }
  }
}

function newtonStep(
  parts: readonly JudgePart[],
  prior: { readonly mean: readonly number[]; readonly sd: readonly number[] },
  sd: number,
  state: State,
  n: number,
) {
  const precision = new Float64Array(n * n);
  const right = new Float64Array(n);
  let logDet = 0;
  prior.sd.forEach((s, i) => {
    precision[i * n + i] = s ** -2;
    right[i] = -((state.common[i] as number) - (prior.mean[i] as number)) / s ** 2;
  });
  const solved = parts.map((part, j) => {
    const { f, common, own } = part;
    const { gradient, curvature } = f.curve(at(part, state, j));
    const m = f.size;
    const k = sd === 0 ? 0 : own;
    const block = new Float64Array(k * k);
    for (let a = 0; a < k; a += 1)
      for (let b = 0; b < k; b += 1)
        block[a * k + b] = (curvature[a * m + b] as number) + (a === b ? sd ** -2 : 0);
    const lower = cholesky(block, k);
    if (lower === null) throw new RangeError("judgedMode requires concave parts, got one that is not");
    for (let a = 0; a < k; a += 1) logDet += 2 * Math.log(lower[a * k + a] as number);
    const pull = Float64Array.from(
      { length: k },
      (_, a) => (gradient[a] as number) - ((state.shifts[j] as Float64Array)[a] as number) / sd ** 2,
    );
    const pulled = solveCholesky(lower, pull);
    // Column q: the block's inverse times how the shifts curve together with the judge's parameter q.
    const bent = Array.from({ length: m }, (_, q) =>
      solveCholesky(
        lower,
        Float64Array.from({ length: k }, (__, a) => curvature[a * m + q] as number),
      ),
    );
    for (let p = 0; p < m; p += 1) {
      const row = common[p] as number;
      let slope = gradient[p] as number;
      for (let a = 0; a < k; a += 1) slope -= (curvature[p * m + a] as number) * (pulled[a] as number);
      right[row] = (right[row] as number) + slope;
      for (let q = 0; q < m; q += 1) {
        const column = bent[q] as Float64Array;
        let term = curvature[p * m + q] as number;
        for (let a = 0; a < k; a += 1) term -= (curvature[p * m + a] as number) * (column[a] as number);
        const place = row * n + (common[q] as number);
        precision[place] = (precision[place] as number) + term;
      }
    }
    return { pulled, bent, k, m, pull };
  });
  const factor = cholesky(precision, n);
  if (factor === null) throw new RangeError("judgedMode requires concave parts, got one that is not");
  for (let i = 0; i < n; i += 1) logDet += 2 * Math.log(factor[i * n + i] as number);
  const move = solveCholesky(factor, right);
  let gain = right.reduce((sum, r, i) => sum + r * (move[i] as number), 0);
  const moves = solved.map(({ pulled, bent, k, m, pull }, j) => {
    const step = Float64Array.from(pulled);
    for (let q = 0; q < m; q += 1) {
      const by = move[parts[j]?.common[q] ?? 0] as number;
      const column = bent[q] as Float64Array;
      for (let a = 0; a < k; a += 1) step[a] = (step[a] as number) - (column[a] as number) * by;
    }
    pull.forEach((p, a) => {
      gain += p * (pulled[a] as number);
    });
    return step;
  });
  return { move, moves, factor, logDet, gain };
}
