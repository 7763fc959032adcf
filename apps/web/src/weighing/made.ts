import { CONVENTIONAL_AIR } from "@partsproof/core/alcoholometry";
import { abv20, celsius } from "@partsproof/core/quantity";
import {
  labelStrength,
  scaleMass,
  thermometer,
  type WeighedPour,
  weighedPoursUncertainty,
} from "@partsproof/core/uncertainty";
import { type Told, told } from "../bench/index.ts";
import { printG } from "../figures/index.ts";
import { band } from "./band.ts";
import type { Pouring, Standing } from "./pouring.ts";

/** What was really made, give or take. */
export interface Made {
  readonly strength: Told;
  readonly volume: Told;
  readonly proof: Told;
  readonly massG: number;
}

/** Strength and volume of what is in the vessel, from what the scale showed; null while all of that is no more than it can tell. */
export function made(pouring: Pouring, now: Standing): Made | null {
  const pours = now.poured.flatMap((one, i): WeighedPour[] => {
    if (one.g <= 0) return [];
    const source = pouring.sources[one.source];
    return [
      {
        grams: scaleMass({
          id: `g${i}`,
          g: one.g,
          class: pouring.scale,
          words: `your scale for ${printG(one.g)}`,
        }),
        abv20: labelStrength({
          id: `s${one.source}`,
          abv20: abv20(source?.abv20 ?? 0),
          rule: source === undefined ? "exact" : pouring.label,
          words: `the label of ${source?.label ?? "the water"}`,
        }),
      },
    ];
  });
  if (now.poured.reduce((sum, one) => sum + one.g, 0) <= band(0, pouring.scale).by) return null;
  const t = thermometer({ id: "t", celsius: celsius(pouring.celsius), class: pouring.thermometer });
  const figure = (of: "abv20" | "volumeMl" | "proof60F"): Told =>
    told(weighedPoursUncertainty(pours, of, { celsius: t, air: CONVENTIONAL_AIR }), { measure: "B" });
  return {
    strength: figure("abv20"),
    volume: figure("volumeMl"),
    proof: figure("proof60F"),
    massG: now.poured.reduce((sum, one) => sum + one.massG, 0),
  };
}
