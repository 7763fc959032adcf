import type { AttributeBelief } from "./attribute-belief.ts";
import { LABEL_SIZE } from "./label-numbers.ts";
import { meanOf, varianceOf, withNumbers } from "./level-sum.ts";
import { MIDDLE } from "./prior.data.ts";
import type { AttributeStudy } from "./studied.ts";
import type { TableState } from "./table-state.ts";

/** How the log likelihood rises with each number of the table's state: of ln where the number is a spread or a stretch. */
export interface StateSlopes {
  apart: number;
  mixing: number;
  bias: number;
  readonly noise: Float64Array;
  readonly offset: Float64Array;
  readonly stretch: Float64Array;
}

export const noSlopes = (tasters: number): StateSlopes => ({
  apart: 0,
  mixing: 0,
  bias: 0,
  noise: new Float64Array(tasters),
  offset: new Float64Array(tasters),
  stretch: new Float64Array(tasters),
});

/**
 * One attribute's slopes, added to `into`, and the slope of ln of how far whiskeys lie apart in it: the mean of the slopes as if all
 * unknowns were known, over what is believed of them (Fisher's identity; McLachlan and Krishnan, The EM Algorithm, 3.7, from memory).
 */
export function addSlopes(
  study: AttributeStudy,
  apart: number,
  state: TableState,
  belief: AttributeBelief,
  into: StateSlopes,
): number {
  const { core, covariance } = belief;
  const c = core.length;
  const tasters = state.offset.length;
  const free = Math.max(0, tasters - 1);
  const levels = study.liquids.map(({ level }) => ({
    mean: meanOf(belief, level),
    variance: varianceOf(belief, level),
    withBias: withNumbers(belief, level, LABEL_SIZE, free),
  }));
  const biases = Array.from({ length: tasters }, (_, t) => {
    let [mean, variance] = [0, 0];
    for (let j = 0; j < free; j += 1) {
      const by = state.rows[t * free + j] as number;
      mean += by * (core[LABEL_SIZE + j] as number);
      for (let k = 0; k < free; k += 1)
        variance +=
          by *
          (state.rows[t * free + k] as number) *
          (covariance[(LABEL_SIZE + j) * c + LABEL_SIZE + k] as number);
    }
    return { mean, variance };
  });
  for (let n = 0; n < study.value.length; n += 1) {
    const t = study.taster[n] as number;
    const stretch = state.stretch[t] as number;
    const own = study.atEnd[n] === 1 ? 0 : (state.noise[t] as number) ** 2;
    const variance = (study.variance[n] as number) + own;
    const level = levels[study.liquid[n] as number] as (typeof levels)[number];
    const bias = biases[t] as (typeof biases)[number];
    let both = 0;
    for (let j = 0; j < free; j += 1)
      both += (state.rows[t * free + j] as number) * (level.withBias[j] as number);
    const off =
      (study.value[n] as number) -
      MIDDLE -
      (state.offset[t] as number) -
      stretch * (level.mean - MIDDLE) -
      bias.mean;
    const spread = stretch * stretch * level.variance + bias.variance + 2 * stretch * both;
    into.offset[t] = (into.offset[t] as number) + off / variance;
    into.stretch[t] =
      (into.stretch[t] as number) +
      (stretch * (off * (level.mean - MIDDLE) - stretch * level.variance - both)) / variance;
    into.noise[t] = (into.noise[t] as number) + (own * ((off * off + spread) / variance - 1)) / variance;
  }
  for (let j = 0; j < free; j += 1) {
    const at = LABEL_SIZE + j;
    into.bias += ((core[at] as number) ** 2 + (covariance[at * c + at] as number)) / state.bias ** 2 - 1;
  }
  for (const { mixed, stray } of study.liquids) {
    if (mixed === 0) continue;
    const square = meanOf(belief, stray) ** 2 + varianceOf(belief, stray);
    into.mixing += square / (state.mixing ** 2 * mixed) - 1;
  }
  let slope = 0;
  for (const { stray } of study.whiskeys)
    slope += (meanOf(belief, stray) ** 2 + varianceOf(belief, stray)) / (apart * apart) - 1;
  return slope;
}
