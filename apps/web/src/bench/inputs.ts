import { abv20, celsius } from "@partsproof/core/quantity";
import {
  cylinderVolume,
  type Input,
  labelStrength,
  syringeVolume,
  thermometer,
} from "@partsproof/core/uncertainty";
import { printAbv, printMl } from "../figures/index.ts";
import type { Tools } from "./tools.ts";

/**
 * A volume measured with what there is, mL. A syringe that holds less is filled several times, and is wrong the same way each
 * time.
 */
export function measuredMl(id: string, ml: number, { measure }: Pick<Tools, "measure">): Input {
  const of = `for ${printMl(ml)}`;
  if (measure === "A" || measure === "B" || measure === "jug") {
    const words = `${measure === "jug" ? "the jug" : "the measuring cylinder"} ${of}`;
    return cylinderVolume({ id, ml, class: measure, words });
  }
  const capacityMl = Number(measure.slice("syringe ".length));
  const fills = Math.max(1, Math.ceil(ml / capacityMl));
  const one = syringeVolume({ id, ml: ml / fills, capacityMl, words: `the syringe ${of}` });
  const spreads = one.spreads.map((spread) =>
    spread.shape === "normal"
      ? { ...spread, standardDeviation: spread.standardDeviation * fills }
      : { ...spread, halfWidth: spread.halfWidth * fills },
  );
  return { ...one, value: ml, spreads };
}

/** A strength as its label says it; water is water. */
export function labelled(id: string, strength: number, tools: Pick<Tools, "label">): Input {
  return labelStrength({
    id,
    abv20: abv20(strength),
    rule: strength === 0 ? "exact" : tools.label,
    words: `the label at ${printAbv(strength)}`,
  });
}

/** How warm the liquids are, °C. */
export function warmth(t: number, tools: Pick<Tools, "thermometer">): Input {
  return thermometer({ id: "t", celsius: celsius(t), class: tools.thermometer });
}
