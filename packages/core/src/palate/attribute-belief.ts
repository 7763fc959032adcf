import { cholesky, inverseOf, solveCholesky, type Square } from "../numeric/index.ts";
import { EFFECT_VARIANCES, LABEL_SIZE } from "./label-numbers.ts";
import { MIDDLE } from "./prior.data.ts";
import type { AttributeStudy } from "./studied.ts";
import type { TableState } from "./table-state.ts";

/** One attribute's unknowns as a normal law, given the table's state. */
export interface AttributeBelief {
  /** Log likelihood of what was said, all unknowns of the attribute integrated out. */
  readonly logLikelihood: number;
  readonly core: Float64Array;
  readonly covariance: Square;
  /** Given the core, a leaf is normal with this variance about `leafRest` and `pull` times the core's numbers that it hangs on. */
  readonly leafVariance: Float64Array;
  readonly leafRest: Float64Array;
  readonly pull: readonly Float64Array[];
}

/**
 * The normal law of one attribute's unknowns, exactly, for a table whose state is known: effects of the label, tasters' biases, levels of
 * whiskeys, and how each mix strays. Unknowns that touch one liquid only (leaves) are taken out first, so that what is left is small.
 *
 * A saying is off the scale's middle by the taster's offset, stretch times (level − middle), the bias, and noise. A level is a whiskey's,
 * or the mean of a mix's parts by share, and how the mix strays.
 *
 * Source: Lindley and Smith, J. R. Stat. Soc. B 34 (1972) 1 (from memory); checked against the joint covariance of all that was said,
 * inverted whole (`palate.ref.test.ts`).
 */
export function attributeBelief(
  study: AttributeStudy,
  labels: readonly Float64Array[],
  apart: number,
  state: TableState,
): AttributeBelief {
  const { core: c, patterns } = study;
  const sums: Sums = {
    a: new Float64Array(c * c),
    rhs: new Float64Array(c),
    d: new Float64Array(patterns.length),
    r: new Float64Array(patterns.length),
    b: patterns.map((pattern) => new Float64Array(pattern.length)),
    quadratic: 0,
    logs: 0,
  };
  addPriors(study, labels, apart, state, sums);
  addSayings(study, state, sums);
  takeOutLeaves(study, sums);
  const { a, rhs, d, r, b } = sums;
  let { quadratic, logs } = sums;
  const factor = cholesky(a, c);
  if (factor === null) throw new Error(`levels of ${study.id} require a table of finite spreads`);
  const core = solveCholesky(factor, rhs);
  for (let i = 0; i < c; i += 1) {
    quadratic -= (rhs[i] as number) * (core[i] as number);
    logs += 2 * Math.log(factor[i * c + i] as number);
  }
  return {
    logLikelihood: -(quadratic + logs) / 2,
    core,
    covariance: inverseOf(factor, c),
    leafVariance: d.map((own) => 1 / own),
    leafRest: r.map((rest, i) => rest / (d[i] as number)),
    pull: b,
  };
}

/** The sums of a normal law in its natural numbers: precisions and what they pull towards, of the core, the leaves, and across. */
interface Sums {
  readonly a: Float64Array;
  readonly rhs: Float64Array;
  readonly d: Float64Array;
  readonly r: Float64Array;
  /** Of each leaf with the core's numbers that it hangs on. */
  readonly b: readonly Float64Array[];
  /** Squares over variances, and ln of variances, of all that was put in. */
  quadratic: number;
  logs: number;
}

function addPriors(
  { core: c, effects, whiskeys, liquids }: AttributeStudy,
  labels: readonly Float64Array[],
  apart: number,
  { offset, bias, mixing }: TableState,
  sums: Sums,
): void {
  const { a, rhs, d, b } = sums;
  const free = Math.max(0, offset.length - 1);
  for (let k = 0; k < LABEL_SIZE; k += 1) {
    const variance = EFFECT_VARIANCES[k] as number;
    const mean = effects[k] as number;
    a[k * c + k] = 1 / variance;
    rhs[k] = mean / variance;
    sums.quadratic += (mean * mean) / variance;
    sums.logs += Math.log(variance);
  }
  for (let j = LABEL_SIZE; j < LABEL_SIZE + free; j += 1) a[j * c + j] = 1 / (bias * bias);
  sums.logs += 2 * free * Math.log(bias) + 2 * labels.length * Math.log(apart);
  const like = 1 / (apart * apart);
  for (let i = 0; i < labels.length; i += 1) {
    const label = labels[i] as Float64Array;
    const { leaf, place, told } = whiskeys[i] as (typeof whiskeys)[number];
    if (leaf >= 0) {
      d[leaf] = like;
      const hung = b[leaf] as Float64Array;
      for (let k = 0; k < LABEL_SIZE; k += 1) hung[k] = -like * (label[k] as number);
    } else {
      a[place * c + place] = (a[place * c + place] as number) + like;
      for (let k = 0; k < LABEL_SIZE; k += 1) {
        a[place * c + k] = -like * (label[k] as number);
        a[k * c + place] = -like * (label[k] as number);
      }
    }
    // A whiskey of which nothing was said teaches nothing of labels either.
    if (told) addSquare(a, c, label, like);
  }
  for (const { mixed, leaf } of liquids) {
    if (mixed === 0) continue;
    const variance = mixing ** 2 * mixed;
    d[leaf] = 1 / variance;
    sums.logs += Math.log(variance);
  }
}

function addSquare(a: Float64Array, c: number, label: Float64Array, weight: number): void {
  for (let k = 0; k < LABEL_SIZE; k += 1) {
    const by = weight * (label[k] as number);
    if (by === 0) continue;
    for (let m = 0; m < LABEL_SIZE; m += 1)
      a[k * c + m] = (a[k * c + m] as number) + by * (label[m] as number);
  }
}

function addSayings(study: AttributeStudy, state: TableState, sums: Sums): void {
  const { core: c, liquids } = study;
  const { a, rhs, d, r, b } = sums;
  const free = Math.max(0, state.offset.length - 1);
  const places = new Int32Array(c);
  const values = new Float64Array(c);
  for (let j = 0; j < free; j += 1) places[j] = LABEL_SIZE + j;
  for (let n = 0; n < study.value.length; n += 1) {
    const t = study.taster[n] as number;
    const stretch = state.stretch[t] as number;
    const noise = study.atEnd[n] === 1 ? 0 : (state.noise[t] as number);
    const variance = (study.variance[n] as number) + noise * noise;
    const weight = 1 / variance;
    const value = (study.value[n] as number) - MIDDLE - (state.offset[t] as number) + MIDDLE * stretch;
    const { leaf, mixed, parts } = liquids[study.liquid[n] as number] as (typeof liquids)[number];
    let count = free;
    for (let j = 0; j < free; j += 1) values[j] = state.rows[t * free + j] as number;
    if (leaf < 0 || mixed > 0)
      for (let k = 0; k < parts.length; k += 1) {
        const part = parts[k] as (typeof parts)[number];
        places[count] = (study.whiskeys[part[0]] as (typeof study.whiskeys)[number]).place;
        values[count] = stretch * part[1];
        count += 1;
      }
    addRow(a, rhs, c, places, values, count, weight, value);
    if (leaf >= 0) {
      d[leaf] = (d[leaf] as number) + weight * stretch * stretch;
      r[leaf] = (r[leaf] as number) + weight * stretch * value;
      const hung = b[leaf] as Float64Array;
      // A mix hangs on biases and its parts in this order; a whiskey on effects of its label, then biases.
      const from = mixed > 0 ? 0 : LABEL_SIZE;
      for (let x = 0; x < count; x += 1)
        hung[from + x] = (hung[from + x] as number) + weight * stretch * (values[x] as number);
    }
    sums.quadratic += weight * value * value;
    sums.logs += Math.log(2 * Math.PI * variance);
  }
}

function addRow(
  a: Float64Array,
  rhs: Float64Array,
  c: number,
  places: Int32Array,
  values: Float64Array,
  count: number,
  weight: number,
  value: number,
): void {
  for (let x = 0; x < count; x += 1) {
    const p = places[x] as number;
    const by = weight * (values[x] as number);
    rhs[p] = (rhs[p] as number) + by * value;
    for (let y = 0; y < count; y += 1) {
      const at = p * c + (places[y] as number);
      a[at] = (a[at] as number) + by * (values[y] as number);
    }
  }
}

/** Integrates the leaves out of the core's law; what is left in `b` is how each leaf hangs on the core. */
function takeOutLeaves({ core: c, patterns, untold }: AttributeStudy, sums: Sums): void {
  const { a, rhs, d, r, b } = sums;
  for (let leaf = 0; leaf < patterns.length; leaf += 1) {
    const own = d[leaf] as number;
    const rest = r[leaf] as number;
    const pattern = patterns[leaf] as Int32Array;
    const hung = b[leaf] as Float64Array;
    if (untold[leaf] === 0) addRow(a, rhs, c, pattern, hung, hung.length, -1 / own, rest);
    for (let x = 0; x < hung.length; x += 1) hung[x] = -(hung[x] as number) / own;
    sums.quadratic -= (rest * rest) / own;
    sums.logs += Math.log(own);
  }
}
