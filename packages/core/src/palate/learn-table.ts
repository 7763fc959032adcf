import {
  cholesky,
  type Climbed,
  type ClimbOptions,
  climb,
  inverseOf,
  type Slope,
  type Square,
} from "../numeric/index.ts";
import { type AttributeBelief, attributeBelief } from "./attribute-belief.ts";
import { onFree } from "./contrasts.ts";
import { placeEnds } from "./place-ends.ts";
import { addSlopes, noSlopes } from "./state-slopes.ts";
import type { Study } from "./studied.ts";
import { type Layout, layoutOf, stateAt, widthsOf } from "./table-numbers.ts";
import type { TableState } from "./table-state.ts";

/** What is believed at one state of the table. */
export interface Looked extends Slope {
  readonly state: TableState;
  readonly beliefs: readonly AttributeBelief[];
}

export interface LearnedTable extends Looked {
  /** Where the state was found: ln of spreads, contrasts of offsets and of ln stretches; see `table-numbers.ts`. */
  readonly at: Float64Array;
  readonly covariance: Square;
  /** The looks a little beside it, by number; that of every attribute's own spread at once is the last. */
  readonly beside: readonly { readonly step: number; readonly looked: Looked }[];
}

function look(study: Study, layout: Layout, x: Float64Array): Looked {
  const { shared, free, rows, middles, widths, tasters } = layout;
  const state = stateAt(layout, x);
  const gradient = new Float64Array(layout.size);
  const slopes = noSlopes(tasters);
  let value = 0;
  const beliefs = study.attributes.map((attribute, i) => {
    const apart = state.apart[i] as number;
    const belief = attributeBelief(attribute, study.labels, apart, state);
    value += belief.logLikelihood;
    gradient[shared + i] = addSlopes(attribute, apart, state, belief, slopes);
    return belief;
  });
  gradient.set([slopes.mixing, slopes.bias, ...slopes.noise], 0);
  gradient.set(onFree(rows, slopes.offset), 2 + tasters);
  gradient.set(onFree(rows, slopes.stretch), 2 + tasters + free);
  for (let i = 0; i < layout.size; i += 1) {
    const off = ((x[i] as number) - (middles[i] as number)) / (widths[i] as number);
    value -= (off * off) / 2;
    gradient[i] = (gradient[i] as number) - off / (widths[i] as number);
  }
  return { value, gradient, state, beliefs };
}

/** How far beside the maximum the slopes are looked at again, in widths. */
const BESIDE = 0.02;

/**
 * The state of the table that makes the notes likeliest, with what was believed of it before (marginal likelihood; all levels integrated
 * out), and a normal law about it from how the slopes fall beside it (Laplace). Attributes do not touch each other once what they share
 * is known, so that all their own spreads are moved at once.
 *
 * Source: Rue, Martino and Chopin, J. R. Stat. Soc. B 71 (2009) 319, for the approach (from memory).
 */
export function learnTable(told: Study): LearnedTable {
  const layout = layoutOf(told);
  const widths = widthsOf(told, layout);
  const { study, top } = climbed(told, layout, widths);
  const { shared, size } = layout;
  const curve = new Float64Array(size * size);
  const beside: { step: number; looked: Looked }[] = [];
  for (let j = 0; j < shared; j += 1) {
    const step = BESIDE * (widths[j] as number);
    const looked = look(study, layout, top.at.with(j, (top.at[j] as number) + step));
    beside.push({ step, looked });
    for (let i = 0; i < size; i += 1) {
      const fall = ((top.found.gradient[i] as number) - (looked.gradient[i] as number)) / step;
      curve[i * size + j] = fall;
      if (i >= shared) curve[j * size + i] = fall;
    }
  }
  const all = look(
    study,
    layout,
    top.at.map((at, i) => (i < shared ? at : at + BESIDE)),
  );
  beside.push({ step: BESIDE, looked: all });
  for (let i = shared; i < size; i += 1)
    curve[i * size + i] = ((top.found.gradient[i] as number) - (all.gradient[i] as number)) / BESIDE;
  return { ...top.found, at: top.at, covariance: covarianceOf(curve, layout), beside };
}

/** How often what the ends of the scale tell is placed anew, each time from where the last climb ended. */
const ROUNDS = 4;

function climbed(told: Study, layout: Layout, widths: Float64Array): { study: Study; top: Climbed<Looked> } {
  let study = told;
  const rise = (from: Float64Array, options: ClimbOptions): Climbed<Looked> =>
    climb((x) => look(study, layout, x), from, widths, options);
  let top = rise(layout.middles, { gain: 0.03, mostSteps: 8 });
  const rounds = told.attributes.some(({ atEnd }) => atEnd.includes(1)) ? ROUNDS : 0;
  for (let round = 0; round < rounds; round += 1) {
    const { state, beliefs } = top.found;
    study = {
      ...study,
      attributes: study.attributes.map((attribute, i) =>
        placeEnds(attribute, state, beliefs[i] as AttributeBelief),
      ),
    };
    top = rise(top.at, { gain: 0.03, mostSteps: 5, from: top.inverse });
  }
  return { study, top: rise(top.at, { gain: 1e-2, mostSteps: 24, from: top.inverse }) };
}

/** The inverse of the curvature, made symmetric; where it bends the wrong way what was believed before is added until it does not. */
function covarianceOf(curve: Square, { size, widths }: Layout): Square {
  const even = curve.map((_, at) => {
    const [i, j] = [Math.floor(at / size), at % size];
    return ((curve[at] as number) + (curve[j * size + i] as number)) / 2;
  });
  for (let more = 0; more < 12; more += 1) {
    const factor = cholesky(even, size);
    if (factor !== null) return inverseOf(factor, size);
    for (let i = 0; i < size; i += 1)
      even[i * size + i] = (even[i * size + i] as number) + 2 ** more / (widths[i] as number) ** 2;
  }
  return Float64Array.from(even, (_, at) =>
    at % (size + 1) === 0 ? (widths[Math.floor(at / size)] as number) ** 2 : 0,
  );
}
