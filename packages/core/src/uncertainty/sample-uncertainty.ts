import { strengthFromMassAndVolume } from "../alcoholometry/index.ts";
import type { Air, Gauged, NotGauged } from "../alcoholometry/index.ts";
import type { Celsius, Grams, MillilitresRead } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * Strength (% vol at 20 °C) of an unlabelled sample from what it weighs and measures, with its uncertainty. With a cylinder the
 * answer is hardly better than a guess: 0.5 mL in 100 is 3 % vol. Errors that would take the liquid beyond water or ethanol stop
 * there.
 *
 * Domain: that of `strengthFromMassAndVolume`. Accuracy: that of `propagate`. Source: as these two. Cost: about 1 ms.
 *
 * @throws RangeError when the density itself is no mixture's.
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
  const at = (g: number, volume: number, t: number): Gauged | NotGauged =>
    strengthFromMassAndVolume({
      onScale: g as Grams,
      ml: volume as MillilitresRead,
      celsius: t as Celsius,
      ...(air === undefined ? {} : { air }),
    });
  const asRead = at(onScale.value, ml.value, celsius.value);
  if (!asRead.ok) throw new RangeError(asRead.issue.message);
  return propagate(
    (valueOf) => {
      const answer = at(valueOf(onScale.id), valueOf(ml.id), valueOf(celsius.id));
      return answer.ok ? answer.abv20 : answer.nearest.abv20;
    },
    [onScale, ml, celsius],
  );
}
