import { inputsOfMeasured, mixtureOfMeasured } from "./measured-pour.ts";
import type { MeasuredPour, MeasuringBench } from "./measured-pour.ts";
import type { MixtureFigure } from "./mix-uncertainty.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * One figure of a mixture whose pours were measured at a bench that is not at 20 °C for sure: volumes as they were read there,
 * grams as the scale showed them, both in one mixture if need be.
 *
 * Domain: that of `mix`, `volumeAt20FromVolumeAt` and `volumeFromWeight`. Accuracy: that of `propagate`. Source: as these. Cost:
 * about 1 ms.
 *
 * @throws RangeError as these do.
 * @example
 * const warm = thermometer({ id: "t", celsius: celsius(24), class: "room" });
 * const pour = (id, ml, abv) => ({ by: "volume", amount: cylinderVolume({ id: `${id} ml`, ml, class: "B" }), abv20: labelStrength({ id, abv20: abv20(abv) }) });
 * measuredUncertainty([pour("a", 50, 62.4), pour("b", 25, 46)], "abv20", { celsius: warm }).standardUncertainty; // 0.14…
 */
export function measuredUncertainty(
  pours: readonly MeasuredPour[],
  figure: MixtureFigure,
  bench: MeasuringBench,
): Uncertain {
  return propagate(
    (valueOf) => mixtureOfMeasured(pours, bench, valueOf)[figure],
    inputsOfMeasured(pours, bench),
  );
}
