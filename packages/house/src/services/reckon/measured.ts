import { CONVENTIONAL_AIR, type Pour, weigh } from "@partsproof/core/alcoholometry";
import { type Abv20, type Celsius, celsius, millilitresRead } from "@partsproof/core/quantity";
import {
  CYLINDER_CHOICES,
  cylinderVolume,
  type Input,
  LABEL_CHOICES,
  labelStrength,
  type MeasuredPour,
  type MeasuringBench,
  SCALE_CHOICES,
  scaleMass,
  syringeVolume,
  THERMOMETER_CHOICES,
  thermometer,
} from "@partsproof/core/uncertainty";
import type { Instruments } from "../../protocol/index.ts";
import { coldestAt, weakestAt } from "./liquid-at.ts";
import { readAt } from "./parts-poured.ts";
import { refuseAsked } from "./refuse-reach.ts";

type Measure = "cylinder" | "syringeMl" | "scale";

/** The one thing amounts are measured with: a cylinder of class B where none is named. */
export function measureOf(
  instruments: Instruments,
  allowed: readonly Measure[] = ["cylinder", "syringeMl", "scale"],
): Measure {
  const [first, second] = allowed.filter((name) => instruments[name] !== undefined);
  if (second !== undefined) {
    const limit = `one of ${allowed.join(", ")}, and ${first} is given`;
    refuseAsked("instruments_exclude", ["uncertainty", second], limit, instruments[second]);
  }
  return first ?? allowed[0] ?? "cylinder";
}

/** A label at `t`, by the rule that was chosen; water has none and is exact. */
export const labelInput = (
  id: string,
  abv20: Abv20,
  words: string,
  { label }: Instruments,
  t: number,
): Input => ({
  ...labelStrength({ id, abv20, words, rule: abv20 === 0 ? "exact" : label }),
  low: weakestAt(t, abv20),
});

/** A volume as it was read with a cylinder or a syringe. */
export function volumeInput(id: string, ml: number, words: string, instruments: Instruments): Input {
  const { syringeMl, cylinder = "B" } = instruments;
  if (syringeMl === undefined) return keptAboveZero(cylinderVolume({ id, ml, class: cylinder, words }));
  if (ml > syringeMl) {
    const limit = `at least the ${Number(ml.toPrecision(4))} mL to be measured`;
    refuseAsked("syringe_too_small", ["uncertainty", "syringeMl"], limit, syringeMl);
  }
  return keptAboveZero(syringeVolume({ id, ml, capacityMl: syringeMl, words }));
}

/** What was measured is there: however wrong the measure, some of it is. */
const keptAboveZero = (input: Input): Input => ({ ...input, low: 1e-6 * input.value });

/** A mass as the scale showed it. */
export const scaleInput = (
  id: string,
  g: number,
  words: string,
  scale: NonNullable<Instruments["scale"]>,
): Input => keptAboveZero(scaleMass({ id, g, class: scale, words }));

/** Where it was measured. The temperature is kept where every liquid is liquid. */
export function benchInput(
  t: number | undefined,
  strengths: readonly Abv20[],
  instruments: Pick<Instruments, "thermometer">,
  inAir = false,
): MeasuringBench {
  const warm = thermometer({ id: "temperature", celsius: celsius(t ?? 20), class: instruments.thermometer });
  const kept = { ...warm, low: coldestAt(warm.value, strengths) };
  return inAir ? { celsius: kept, air: CONVENTIONAL_AIR } : { celsius: kept };
}

/** A pour as it would be measured at `t`; `words` says which liquid. */
export function measuredPour(
  pour: Pour,
  words: string,
  t: Celsius,
  instruments: Instruments,
  inAir = false,
): MeasuredPour {
  const label = labelInput(`label of ${words}`, pour.abv20, `the label of ${words}`, instruments, t);
  const ml = readAt(pour.volumeMl, pour.abv20, t);
  const id = `amount of ${words}`;
  const { scale } = instruments;
  if (scale === undefined) {
    const measure = instruments.syringeMl === undefined ? "cylinder" : "syringe";
    return {
      by: "volume",
      amount: volumeInput(id, ml, `the ${measure} for ${words}`, instruments),
      abv20: label,
    };
  }
  const air = inAir ? { air: CONVENTIONAL_AIR } : {};
  const g = weigh(millilitresRead(ml), { abv20: pour.abv20, celsius: t, ...air }).grams;
  return {
    by: "weight",
    amount: scaleInput(id, g, `your scale for ${words}`, scale),
    abv20: label,
  };
}

/** What the instruments were taken to be, in core's words. */
export function takenAs(
  instruments: Instruments,
  used: readonly ("label" | "measure" | "volume" | "scale" | "thermometer")[],
  t?: number,
): string[] {
  const { label, cylinder = "B", syringeMl, scale, thermometer: warm } = instruments;
  const volume = syringeMl === undefined ? CYLINDER_CHOICES[cylinder] : `syringe of ${syringeMl} mL`;
  const words = {
    label: LABEL_CHOICES[label],
    volume,
    scale: SCALE_CHOICES[scale ?? "kitchen"],
    measure: scale === undefined ? volume : SCALE_CHOICES[scale],
    thermometer: `${t ?? 20} °C, ${THERMOMETER_CHOICES[warm]}`,
  };
  return used.map((what) => words[what]);
}
