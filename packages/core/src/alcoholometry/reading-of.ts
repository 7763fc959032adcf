import { within } from "../quantity/index.ts";
import type { Abv20, Celsius, KgPerM3 } from "../quantity/index.ts";
import { density } from "./density.ts";
import { glassGrowth, markOfMassFraction, standardTemperature } from "./hydrometer.ts";
import type { HydrometerReading } from "./hydrometer.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/**
 * What an instrument of this scale shows in a liquid of known strength at `t`; the inverse of `gauge`. Null when it floats
 * above or sinks below its scale (a cold weak liquid, a warm strong one).
 *
 * Domain: 0 to 100 % vol, -20 to 40 °C and liquid. Accuracy: `gauge` brings it back within 1e-10 % vol. Source: as
 * `gauge`. Cost: below a microsecond.
 *
 * @throws RangeError when `t` is outside -20 to 40 °C, the mixture frozen, or the strength outside 0 to 100 % vol.
 * @example
 * readingOf("abv20", abv20(46), celsius(28)); // { scale: "abv20", value: 49.03… }
 */
export function readingOf(
  scale: HydrometerReading["scale"],
  strength: Abv20,
  t: Celsius,
): HydrometerReading | null {
  within("temperature", "°C", t, -20, 40);
  const mark = (density(massFractionFromAbv20(strength), t) * glassGrowth(scale, t)) as KgPerM3;
  if (scale === "density20") return { scale, value: mark };
  const p = massFractionFromDensity(mark, standardTemperature(scale) as Celsius);
  return p === null ? null : ({ scale, value: markOfMassFraction(scale, p) } as HydrometerReading);
}
