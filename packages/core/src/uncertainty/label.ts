import type { Abv20 } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { LABEL_HALF_WIDTH } from "./label.data.ts";
import { rectangular } from "./spreads.ts";

/** By which rule a label is taken to be right. */
export type LabelClass = keyof typeof LABEL_HALF_WIDTH;

/**
 * The strength on a label, % vol at 20 °C: rectangular within what the law lets a label be off.
 *
 * Source: label.data.ts (27 CFR 19.356(c); Regulation (EU) No 1169/2011, Annex XII). A US label states per cent at 60 °F; 0.3
 * there is 0.3 here.
 *
 * Domain: 0 to 100 % vol. Accuracy: the law's bound; most labels are nearer. Cost: nothing.
 *
 * @throws RangeError when the strength is outside 0 to 100 % vol.
 * @example
 * labelStrength({ id: "rye", abv20: abv20(46) }).spreads[0].halfWidth; // 0.3
 */
export function labelStrength(label: {
  readonly id: string;
  readonly abv20: Abv20;
  readonly rule?: LabelClass;
  readonly words?: string;
}): Input {
  const { id, abv20, rule = "us", words = "the label" } = label;
  return {
    id,
    kind: "label",
    words,
    value: abv20,
    spreads: rectangular(LABEL_HALF_WIDTH[rule]),
    low: 0,
    high: 100,
  };
}
