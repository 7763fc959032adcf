import { abv20FromProof60F, gauge, trueProofWithSolids } from "../alcoholometry/index.ts";
import type { Gauged, HydrometerReading, NotGauged } from "../alcoholometry/index.ts";
import type { Celsius } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * True strength (% vol at 20 °C, or proof at 60 °F) from a hydrometer reading and a temperature, with its uncertainty. Errors that
 * would take the liquid beyond water or ethanol stop there. With `solids` (mg in 100 mL) what they hide is added.
 *
 * Domain: that of `gauge`. Accuracy: that of `propagate`. Source: as `gauge` and `propagate`. Cost: about 1 ms.
 *
 * @throws RangeError when the reading itself is no mixture's at that temperature.
 * @example
 * const reading = hydrometer({ id: "h", reading: 50, division: 0.5, low: 0, high: 100 });
 * const warm = thermometer({ id: "t", celsius: celsius(25), class: "kitchen" });
 * gaugeUncertainty("abv20", reading, warm, "abv20").value; // 48.1…
 */
export function gaugeUncertainty(
  scale: HydrometerReading["scale"],
  reading: Input,
  temperature: Input,
  figure: "abv20" | "proof60F",
  solids?: Input,
): Uncertain {
  const at = (value: number, celsius: number): Gauged | NotGauged =>
    gauge({ scale, value } as HydrometerReading, celsius as Celsius);
  const asRead = at(reading.value, temperature.value);
  if (!asRead.ok) throw new RangeError(asRead.issue.message);
  return propagate(
    (valueOf) => {
      const answer = at(valueOf(reading.id), valueOf(temperature.id));
      const seen = answer.ok ? answer : answer.nearest;
      if (solids === undefined) return seen[figure];
      const proof = trueProofWithSolids(seen.proof60F, valueOf(solids.id)).proof60F;
      return figure === "proof60F" ? proof : abv20FromProof60F(proof);
    },
    solids === undefined ? [reading, temperature] : [reading, temperature, solids],
  );
}
