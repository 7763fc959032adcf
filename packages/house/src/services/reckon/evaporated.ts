import { abv20FromMassFraction, evaporated } from "@partsproof/core/alcoholometry";
import { celsius, type MassFraction } from "@partsproof/core/quantity";
import {
  evaporatedUncertainty,
  type MeasuredLevel,
  THERMOMETER_CHOICES,
  thermometer,
} from "@partsproof/core/uncertainty";
import type { BodyRead, EvaporatedResult, Instruments } from "../../protocol/index.ts";
import { benchAt, coldestAt } from "./liquid-at.ts";
import { labelInput, measureOf, takenAs, volumeInput } from "./measured.ts";
import { at20 } from "./parts-poured.ts";
import { refuseReach } from "./refuse-reach.ts";
import { abvOf } from "./stated.ts";
import { told } from "./told.ts";

type Body = BodyRead<"reckonEvaporated">;

export function reckonEvaporated(body: Body): EvaporatedResult {
  const level = (which: "before" | "after") => {
    const { volumeMl, strength, celsius: t } = body[which];
    const abv20 = abvOf(strength);
    return { volumeMl: at20(volumeMl, abv20, benchAt(t, [abv20], [which, "celsius"])), abv20 };
  };
  const gone = evaporated(level("before"), level("after"));
  if (!gone.ok) {
    refuseReach(
      gone.issue,
      ["after"],
      "g of ethanol",
      "nothing has gone; something was poured in, or a reading is off",
    );
  }
  const { ethanolG, waterG, massG, volumeMl, ethanolShare, massFractionGone } = gone;
  return {
    ethanolG,
    waterG,
    massG,
    volumeMl,
    ethanolShare,
    abv20Gone: massFractionGone === null ? null : abv20FromMassFraction(massFractionGone as MassFraction),
    ...(body.uncertainty === undefined ? {} : { uncertainty: uncertainLoss(body, body.uncertainty) }),
  };
}

function uncertainLoss(body: Body, instruments: Instruments): NonNullable<EvaporatedResult["uncertainty"]> {
  measureOf(instruments, ["cylinder", "syringeMl"]);
  const measure = instruments.syringeMl === undefined ? "cylinder" : "syringe";
  const level = (which: "before" | "after"): MeasuredLevel => {
    const { volumeMl, strength, celsius: t } = body[which];
    const abv20 = abvOf(strength);
    const warm = thermometer({
      id: `temperature ${which}`,
      celsius: celsius(t),
      class: instruments.thermometer,
      words: `the thermometer ${which}`,
    });
    return {
      ml: volumeInput(`level ${which}`, volumeMl, `the ${measure} ${which}`, instruments),
      abv20: labelInput(`strength ${which}`, abv20, `the strength ${which}`, instruments, t),
      celsius: { ...warm, low: coldestAt(t, [abv20]) },
    };
  };
  const [before, after] = [level("before"), level("after")];
  const figure = (name: "ethanolG" | "waterG" | "massG") => told(evaporatedUncertainty(before, after, name));
  return {
    takenAs: [...takenAs(instruments, ["label", "volume"]), THERMOMETER_CHOICES[instruments.thermometer]],
    ethanolG: figure("ethanolG"),
    waterG: figure("waterG"),
    massG: figure("massG"),
  };
}
