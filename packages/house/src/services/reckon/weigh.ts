import { CONVENTIONAL_AIR, volumeFromWeight, type Weighed, weigh } from "@partsproof/core/alcoholometry";
import { type Abv20, type Celsius, grams, millilitresRead } from "@partsproof/core/quantity";
import { type MeasuredPour, measuredUncertainty } from "@partsproof/core/uncertainty";
import type { BodyRead, Instruments, WeighResult } from "../../protocol/index.ts";
import { benchAt } from "./liquid-at.ts";
import { benchInput, labelInput, measureOf, scaleInput, takenAs, volumeInput } from "./measured.ts";
import { onlyOne } from "./refuse-reach.ts";
import { abvOf } from "./stated.ts";
import { told } from "./told.ts";

type Body = BodyRead<"reckonWeigh">;

export function reckonWeigh(body: Body): WeighResult {
  const { ml, grams: g, inAir } = body;
  const strength = abvOf(body.strength);
  const t = benchAt(body.celsius, [strength]);
  const weighing = { abv20: strength, celsius: t, ...(inAir ? { air: CONVENTIONAL_AIR } : {}) };
  const asked = onlyOne({ ml, grams: g });
  const weighed =
    asked === "ml" ? weigh(millilitresRead(ml ?? 0), weighing) : volumeFromWeight(grams(g ?? 0), weighing);
  return {
    grams: weighed.grams,
    massG: weighed.massG,
    ml: weighed.ml,
    ml20: weighed.ml20,
    kgPerM3: weighed.kgPerM3,
    ethanolG: weighed.liquid.ethanolG,
    celsius: t,
    inAir,
    ...(body.uncertainty === undefined
      ? {}
      : { uncertainty: uncertainWeight(asked, weighed, strength, t, inAir, body.uncertainty) }),
  };
}

function uncertainWeight(
  asked: "ml" | "grams",
  { ml, grams: g }: Weighed,
  strength: Abv20,
  t: Celsius,
  inAir: boolean,
  instruments: Instruments,
): NonNullable<WeighResult["uncertainty"]> {
  const abv20 = labelInput("label", strength, "the label", instruments, t);
  const bench = benchInput(t, [strength], instruments, inAir);
  if (asked === "ml") {
    measureOf(instruments, ["cylinder", "syringeMl"]);
    const measure = instruments.syringeMl === undefined ? "cylinder" : "syringe";
    const pour: MeasuredPour = {
      by: "volume",
      amount: volumeInput("amount", ml, `the ${measure}`, instruments),
      abv20,
    };
    const taken = takenAs(instruments, ["label", "volume", "thermometer"], t);
    return { takenAs: taken, massG: told(measuredUncertainty([pour], "massG", bench)) };
  }
  const amount = scaleInput("amount", g, "your scale", instruments.scale ?? "kitchen");
  const taken = takenAs(instruments, ["label", "scale", "thermometer"], t);
  return {
    takenAs: taken,
    ml20: told(measuredUncertainty([{ by: "weight", amount, abv20 }], "volumeMl", bench)),
  };
}
