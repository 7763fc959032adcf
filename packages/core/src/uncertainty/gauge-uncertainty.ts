import { gauge } from "../alcoholometry/index.ts";
import type { HydrometerReading } from "../alcoholometry/index.ts";
import type { Celsius } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * True strength (% vol at 20 °C, or proof at 60 °F) from a hydrometer reading and a temperature, with its uncertainty.
 *
 * @throws RangeError when the reading, or one standard uncertainty from it, is no mixture's at that temperature.
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
): Uncertain {
  return propagate(
    (valueOf) => {
      const value = valueOf(reading.id) as HydrometerReading["value"];
      const answer = gauge({ scale, value } as HydrometerReading, valueOf(temperature.id) as Celsius);
      if (!answer.ok) throw new RangeError(answer.issue.message);
      return answer[figure];
    },
    [reading, temperature],
  );
}
