import {
  abv20FromProof60F,
  gauge,
  type Gauged,
  type HydrometerReading,
  trueProofWithSolids,
} from "@partsproof/core/alcoholometry";
import {
  abv20,
  type Celsius,
  celsius,
  celsiusFromFahrenheit,
  fahrenheit,
  kgPerM3,
  proof60F,
} from "@partsproof/core/quantity";
import {
  dissolvedSolids,
  gaugeUncertainty,
  hydrometer,
  THERMOMETER_CHOICES,
  thermometer,
} from "@partsproof/core/uncertainty";
import type { BodyRead, GaugeResult, Hydrometer } from "../../protocol/index.ts";
import { onlyOne, refuseReach } from "./refuse-reach.ts";
import { told } from "./told.ts";

type Body = BodyRead<"reckonGauge">;

export function reckonGauge(body: Body): GaugeResult {
  const t = temperatureOf(body);
  const reading = readingOf(body.reading);
  const seen = gauge(reading, t);
  if (!seen.ok) {
    const { nearest } = seen;
    refuseReach(
      seen.issue,
      ["reading", "value"],
      "kg/m³",
      `${nearest.abv20.toFixed(2)} % vol, ${nearest.proof60F.toFixed(2)} proof`,
    );
  }
  const { solidsMgPer100Ml: solids } = body;
  return {
    ...truth(seen, solids),
    kgPerM3: seen.kgPerM3,
    kgPerM3At20: seen.kgPerM3At20,
    celsius: t,
    ...(body.uncertainty === undefined
      ? {}
      : { uncertainty: uncertainGauge(reading, t, solids, body.uncertainty) }),
  };
}

function temperatureOf({ celsius: c, fahrenheit: f }: Body): Celsius {
  const asked = onlyOne({ celsius: c, fahrenheit: f });
  return asked === "celsius" ? celsius(c ?? 0) : celsiusFromFahrenheit(fahrenheit(f ?? 0));
}

function readingOf({ scale, value }: Body["reading"]): HydrometerReading {
  if (scale === "abv20") return { scale, value: abv20(value) };
  return scale === "proof60F" ? { scale, value: proof60F(value) } : { scale, value: kgPerM3(value) };
}

/** Strength with what dissolved solids hide, if they are given. */
function truth(seen: Gauged, mg: number | undefined): Pick<GaugeResult, "trueProof" | "abv20" | "solids"> {
  if (mg === undefined) return { trueProof: seen.proof60F, abv20: seen.abv20 };
  const { proof60F: trueProof, ...solids } = trueProofWithSolids(seen.proof60F, mg);
  return {
    trueProof,
    abv20: abv20FromProof60F(trueProof),
    solids: { mgPer100Ml: mg, apparentProof: seen.proof60F, ...solids },
  };
}

/** Divisions of usual hydrometers and the ends of their scales. Common practice, no source. */
const SCALES = {
  abv20: { division: 1, low: 0, high: 100, unit: "% vol" },
  proof60F: { division: 2, low: 0, high: 200, unit: "proof" },
  density20: { division: 1, low: 0, high: 2000, unit: "kg/m³" },
} as const;

function uncertainGauge(
  reading: HydrometerReading,
  t: Celsius,
  mg: number | undefined,
  given: Hydrometer,
): NonNullable<GaugeResult["uncertainty"]> {
  const { unit, low, high, division: usual } = SCALES[reading.scale];
  const { division = usual, error = division } = given;
  const read = hydrometer({ id: "reading", reading: reading.value, division, error, low, high });
  const warm = thermometer({ id: "temperature", celsius: t, class: given.thermometer });
  const solids = mg === undefined ? undefined : dissolvedSolids({ id: "solids", mgPer100Ml: mg });
  const figure = (name: "abv20" | "proof60F") =>
    told(gaugeUncertainty(reading.scale, read, warm, name, solids));
  return {
    takenAs: [
      `hydrometer marked every ${division} ${unit}, right within ${error} ${unit}, read to half a mark`,
      THERMOMETER_CHOICES[given.thermometer],
      ...(mg === undefined ? [] : ["dissolved solids hide what the rule says, within a tenth"]),
    ],
    trueProof: figure("proof60F"),
    abv20: figure("abv20"),
  };
}
