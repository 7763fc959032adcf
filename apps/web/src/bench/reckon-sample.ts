import {
  CONVENTIONAL_AIR,
  type Gauged,
  type NotGauged,
  strengthFromMassAndVolume,
} from "@partsproof/core/alcoholometry";
import { celsius, grams, millilitresRead } from "@partsproof/core/quantity";
import { propagate, scaleMass } from "@partsproof/core/uncertainty";
import { printAbv, printG, printMl } from "../figures/index.ts";
import { answered, no, type No } from "./answered.ts";
import { measuredMl, warmth } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface SampleAnswer {
  readonly ok: true;
  readonly strength: Told;
  readonly proof: Told;
  /** At the temperature of the sample, kg/m³. */
  readonly density: Told;
}

/** How strong an unlabelled sample is, from what it weighs in air and what it measures. */
export function reckonSample(ask: {
  readonly g: number;
  readonly ml: number;
  readonly celsius: number;
  readonly tools: Tools;
}): SampleAnswer | No {
  return answered(() => {
    const { ml, tools } = ask;
    const at = (g: number, volume: number, t: number): Gauged | NotGauged =>
      strengthFromMassAndVolume({
        onScale: grams(g),
        ml: millilitresRead(volume),
        celsius: celsius(t),
        air: CONVENTIONAL_AIR,
      });
    const asRead = at(ask.g, ml, ask.celsius);
    if (!asRead.ok) {
      const { nearest } = asRead;
      const would = (nearest.kgPerM3 * ml) / 1000;
      return no(
        asRead.issue.message.replace("reading", "density"),
        `${printAbv(nearest.abv20)}, of which ${printMl(ml)} weigh ${printG(would)}`,
      );
    }
    const inputs = [
      scaleMass({ id: "g", g: ask.g, class: tools.scale }),
      measuredMl("ml", ml, tools),
      warmth(ask.celsius, tools),
    ];
    // Errors that would take it beyond water or ethanol stop there, as in core's own sampleUncertainty.
    const figure = (of: "abv20" | "proof60F" | "kgPerM3"): Told =>
      told(
        propagate((valueOf) => {
          const one = at(valueOf("g"), valueOf("ml"), valueOf("t"));
          return (one.ok ? one : one.nearest)[of];
        }, inputs),
        tools,
      );
    return { ok: true, strength: figure("abv20"), proof: figure("proof60F"), density: figure("kgPerM3") };
  });
}
