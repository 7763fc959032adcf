import type { LabelFacts } from "./label.ts";
import { EFFECT_VARIANCES, effectMeans, labelNumbers } from "./label-numbers.ts";
import { BELIEVED } from "./prior.data.ts";
import type { SaidLevel } from "./told.ts";

/**
 * What a label alone says of an attribute, before any note: mean and one standard deviation. May reach past 0 and 10.
 *
 * @example labelLevel({ ageYears: 10, abv: 46, kind: "malt", grains: null, casks: null }, "smoke.smoke") // 2 ± 2.1
 */
export function labelLevel(label: LabelFacts, attribute: string): SaidLevel {
  const numbers = labelNumbers(label);
  const means = effectMeans(attribute);
  let [mean, variance] = [0, BELIEVED.apart.middle ** 2];
  for (const [k, number] of numbers.entries()) {
    mean += number * (means[k] as number);
    variance += number * number * (EFFECT_VARIANCES[k] as number);
  }
  return { mean, sd: Math.sqrt(variance) };
}
