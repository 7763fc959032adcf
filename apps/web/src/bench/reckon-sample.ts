import { CONVENTIONAL_AIR, type Gauged, strengthFromMassAndVolume } from "@partsproof/core/alcoholometry";
import { celsius, grams, millilitresRead } from "@partsproof/core/quantity";
import { sampleUncertainty, scaleMass } from "@partsproof/core/uncertainty";
import { printAbv } from "../figures/index.ts";
import { answered, no, type No } from "./answered.ts";
import { measuredMl, warmth } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface SampleAnswer {
  readonly ok: true;
  readonly gauged: Gauged;
  readonly strength: Told;
}

/** How strong an unlabelled sample is, from what it weighs in air and what it measures. */
export function reckonSample(ask: {
  readonly g: number;
  readonly ml: number;
  readonly celsius: number;
  readonly tools: Tools;
}): SampleAnswer | No {
  return answered(() => {
    const { g, ml, tools } = ask;
    const gauged = strengthFromMassAndVolume({
      onScale: grams(g),
      ml: millilitresRead(ml),
      celsius: celsius(ask.celsius),
      air: CONVENTIONAL_AIR,
    });
    if (!gauged.ok) {
      const nearest = gauged.nearest;
      const would = (nearest.kgPerM3 * ml) / 1000;
      return no(
        gauged.issue.message.replace("reading", "density"),
        `${printAbv(nearest.abv20)}, of which ${ml} mL weigh ${would.toFixed(1)} g`,
      );
    }
    const strength = sampleUncertainty({
      onScale: scaleMass({ id: "g", g, class: tools.scale }),
      ml: measuredMl("ml", ml, tools),
      celsius: warmth(ask.celsius, tools),
      air: CONVENTIONAL_AIR,
    });
    return { ok: true, gauged, strength: told(strength, tools) };
  });
}
