import { strengthFromMassAndVolume } from "../alcoholometry/index.ts";
import type { Air } from "../alcoholometry/index.ts";
import type { Celsius, Grams, MillilitresRead } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * Strength (% vol at 20 °C) of an unlabelled sample from what it weighs and measures, with its uncertainty. With a cylinder the
 * answer is hardly better than a guess: 0.5 mL in 100 is 3 % vol.
 *
 * @throws RangeError when the density, or one standard uncertainty from it, is no mixture's.
 * @example
 * const onScale = scaleMass({ id: "g", g: 94.8, class: "pocket" });
 * const ml = cylinderVolume({ id: "ml", ml: 100, class: "A" });
 * const warmth = thermometer({ id: "t", celsius: celsius(20), class: "kitchen" });
 * headline(sampleUncertainty({ onScale, ml, celsius: warmth }).budget); // "the measuring cylinder, not the thermometer"
 */
export function sampleUncertainty(sample: {
  readonly onScale: Input;
  readonly ml: Input;
  readonly celsius: Input;
  readonly air?: Air;
}): Uncertain {
  const { onScale, ml, celsius, air } = sample;
  return propagate(
    (valueOf) => {
      const answer = strengthFromMassAndVolume({
        onScale: valueOf(onScale.id) as Grams,
        ml: valueOf(ml.id) as MillilitresRead,
        celsius: valueOf(celsius.id) as Celsius,
        ...(air === undefined ? {} : { air }),
      });
      if (!answer.ok) throw new RangeError(answer.issue.message);
      return answer.abv20;
    },
    [onScale, ml, celsius],
  );
}
