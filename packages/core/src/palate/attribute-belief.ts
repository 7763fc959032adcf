import { cholesky, solveCholesky, type Square } from "../numeric/index.ts";
import { inverseOfFactor } from "./inverse-of-factor.ts";
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
  const { core: c, patterns, liquids } = study;
  const leaves = patterns.length;
  const tasters = state.offset.length;
  const free = Math.max(0, tasters - 1);
  const a = new Float64Array(c * c);
  const rhs = new Float64Array(c);
  const d = new Float64Array(leaves);
  const r = new Float64Array(leaves);
  // With the core's numbers that each leaf hangs on.
  const b = patterns.map((pattern) => new Float64Array(pattern.length));
  let quadratic = 0;
  let logs = 0;

  for (let k = 0; k < LABEL_SIZE; k += 1) {
    const [variance, mean] = [EFFECT_VARIANCES[k] as number, study.effects[k] as number];
    a[k * c + k] = 1 / variance;
    rhs[k] = mean / variance;
    quadratic += (mean * mean) / variance;
    logs += Math.log(variance);
  }
  for (let j = 0; j < free; j += 1) a[(LABEL_SIZE + j) * c + LABEL_SIZE + j] = 1 / (state.bias * state.bias);
  logs += 2 * free * Math.log(state.bias);

  const like = 1 / (apart * apart);
  for (const [i, label] of labels.entries()) {
    const { leaf, place, told } = study.whiskeys[i] as (typeof study.whiskeys)[number];
    if (leaf >= 0) {
      d[leaf] = like;
      const own = b[leaf] as Float64Array;
      for (let k = 0; k < LABEL_SIZE; k += 1) own[k] = -like * (label[k] as number);
    } else {
      a[place * c + place] = (a[place * c + place] as number) + like;
      for (let k = 0; k < LABEL_SIZE; k += 1) {
        a[place * c + k] = -like * (label[k] as number);
        a[k * c + place] = -like * (label[k] as number);
      }
    }
    // A whiskey of which nothing was said teaches nothing of labels either.
    if (!told) continue;
    for (let k = 0; k < LABEL_SIZE; k += 1) {
      const by = like * (label[k] as number);
      for (let m = 0; m < LABEL_SIZE; m += 1)
        a[k * c + m] = (a[k * c + m] as number) + by * (label[m] as number);
    }
  }
  logs += 2 * labels.length * Math.log(apart);
  for (const { mixed, leaf } of liquids) {
    if (mixed === 0) continue;
    const variance = state.mixing ** 2 * mixed;
    d[leaf] = 1 / variance;
    logs += Math.log(variance);
  }

  const places = new Int32Array(c);
  const values = new Float64Array(c);
  for (let j = 0; j < free; j += 1) places[j] = LABEL_SIZE + j;
  for (let n = 0; n < study.value.length; n += 1) {
    const t = study.taster[n] as number;
    const stretch = state.stretch[t] as number;
    const variance =
      (study.variance[n] as number) + (study.atEnd[n] === 1 ? 0 : (state.noise[t] as number) ** 2);
    const weight = 1 / variance;
    const value = (study.value[n] as number) - MIDDLE - (state.offset[t] as number) + MIDDLE * stretch;
    const liquid = liquids[study.liquid[n] as number] as (typeof liquids)[number];
    const { leaf, mixed, parts } = liquid;
    let count = free;
    for (let j = 0; j < free; j += 1) values[j] = state.rows[t * free + j] as number;
    if (leaf < 0 || mixed > 0)
      for (const [i, share] of parts) {
        places[count] = (study.whiskeys[i] as (typeof study.whiskeys)[number]).place;
        values[count] = stretch * share;
        count += 1;
      }
    for (let x = 0; x < count; x += 1) {
      const [p, u] = [places[x] as number, weight * (values[x] as number)];
      rhs[p] = (rhs[p] as number) + u * value;
      for (let y = 0; y < count; y += 1) {
        const at = p * c + (places[y] as number);
        a[at] = (a[at] as number) + u * (values[y] as number);
      }
    }
    if (leaf >= 0) {
      d[leaf] = (d[leaf] as number) + weight * stretch * stretch;
      r[leaf] = (r[leaf] as number) + weight * stretch * value;
      const own = b[leaf] as Float64Array;
      // A mix hangs on biases and its parts in this order; a whiskey on effects of its label, then biases.
      const from = mixed > 0 ? 0 : LABEL_SIZE;
      for (let x = 0; x < count; x += 1)
        own[from + x] = (own[from + x] as number) + weight * stretch * (values[x] as number);
    }
    quadratic += weight * value * value;
    logs += Math.log(2 * Math.PI * variance);
  }

  for (let leaf = 0; leaf < leaves; leaf += 1) {
    const [own, rest] = [d[leaf] as number, r[leaf] as number];
    const pattern = patterns[leaf] as Int32Array;
    const hung = b[leaf] as Float64Array;
    for (let x = 0; x < (study.untold[leaf] === 1 ? 0 : pattern.length); x += 1) {
      const p = pattern[x] as number;
      const by = (hung[x] as number) / own;
      rhs[p] = (rhs[p] as number) - by * rest;
      for (let y = 0; y < pattern.length; y += 1) {
        const at = p * c + (pattern[y] as number);
        a[at] = (a[at] as number) - by * (hung[y] as number);
      }
    }
    for (let x = 0; x < hung.length; x += 1) hung[x] = -(hung[x] as number) / own;
    quadratic -= (rest * rest) / own;
    logs += Math.log(own);
  }
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
    covariance: inverseOfFactor(factor, c),
    leafVariance: d.map((own) => 1 / own),
    leafRest: r.map((rest, i) => rest / (d[i] as number)),
    pull: b,
  };
}
