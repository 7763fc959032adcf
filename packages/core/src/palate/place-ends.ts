import { normalCumulative, normalDensity } from "../statistics/index.ts";
import type { AttributeBelief } from "./attribute-belief.ts";
import { LABEL_SIZE } from "./label-numbers.ts";
import { meanOf, varianceOf, withNumbers } from "./level-sum.ts";
import { MIDDLE, SCALE } from "./prior.data.ts";
import { endOf } from "./said-at-ends.ts";
import type { AttributeStudy } from "./studied.ts";
import type { TableState } from "./table-state.ts";

/**
 * The study with each saying at the end of the scale as a normal one that tells of the level what "this end, or beyond it" tells, given
 * all else that is believed: nobody can say less than nothing, so that 0 by one who says little of everything is no sure 0.
 *
 * Expectation propagation, one round (Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), 3.6, from memory).
 */
export function placeEnds(study: AttributeStudy, state: TableState, belief: AttributeBelief): AttributeStudy {
  if (!study.atEnd.includes(1)) return study;
  const value = study.value.slice();
  const variance = study.variance.slice();
  const free = Math.max(0, state.offset.length - 1);
  const c = belief.core.length;
  for (let n = 0; n < value.length; n += 1) {
    if (study.atEnd[n] === 0) continue;
    const end = endOf(study.said[n] as number);
    const t = study.taster[n] as number;
    const stretch = state.stretch[t] as number;
    const { level } = study.liquids[study.liquid[n] as number] as (typeof study.liquids)[number];
    const withBias = withNumbers(belief, level, LABEL_SIZE, free);
    let mean = MIDDLE + (state.offset[t] as number) + stretch * (meanOf(belief, level) - MIDDLE);
    let spread = stretch * stretch * varianceOf(belief, level);
    for (let j = 0; j < free; j += 1) {
      const by = state.rows[t * free + j] as number;
      mean += by * (belief.core[LABEL_SIZE + j] as number);
      spread += 2 * stretch * by * (withBias[j] as number);
      for (let k = 0; k < free; k += 1)
        spread +=
          by *
          (state.rows[t * free + k] as number) *
          (belief.covariance[(LABEL_SIZE + j) * c + LABEL_SIZE + k] as number);
    }
    const precision = 1 / spread - 1 / (variance[n] as number);
    if (!(precision > 0)) continue;
    const without = 1 / precision;
    const rest = without * (mean / spread - (study.value[n] as number) / (variance[n] as number));
    const own = (study.own[n] as number) + (state.noise[t] as number) ** 2;
    const edge = end < 0 ? SCALE.low + SCALE.step / 2 : SCALE.high - SCALE.step / 2;
    const wide = Math.sqrt(without + own);
    const z = (-end * (edge - rest)) / wide;
    const ratio = normalDensity(z) / Math.max(1e-300, normalCumulative(z));
    const told = (ratio * (z + ratio)) / (without + own);
    // What the end tells as a normal saying of its own: precision told / (1 − without · told).
    const off = Math.min(1e4, Math.max(1e-3, (1 - without * told) / told));
    variance[n] = off;
    value[n] = rest + (end * ratio) / wide / told;
  }
  return { ...study, value, variance };
}
