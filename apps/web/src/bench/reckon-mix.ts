import {
  type Mixture,
  mix,
  volumeAt20FromVolumeAt,
  volumeAtFromVolumeAt20,
} from "@partsproof/core/alcoholometry";
import { abv20, celsius, millilitres20, millilitresRead } from "@partsproof/core/quantity";
import { propagate } from "@partsproof/core/uncertainty";
import { answered, type No } from "./answered.ts";
import { labelled, measuredMl, warmth } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface MixRow {
  readonly parts: number;
  readonly abv20: number;
}

export interface MixAnswer {
  readonly ok: true;
  readonly mixture: Mixture;
  readonly strength: Told;
  readonly proof: Told;
  readonly volume: Told;
  /** The mixture's volume at the temperature of the measuring, mL. */
  readonly readMl: number;
  /** What is measured of each part at that temperature, mL. */
  readonly pouredMl: readonly number[];
}

/** Parts by volume, measured at `celsius` to `totalMl` in all, mixed; a part of 0 is left out. At least one part above 0. */
export function reckonMix(ask: {
  readonly rows: readonly MixRow[];
  readonly totalMl: number;
  readonly celsius: number;
  readonly tools: Tools;
}): MixAnswer | No {
  return answered(() => {
    const { rows, totalMl, tools } = ask;
    const all = rows.reduce((sum, row) => sum + row.parts, 0);
    const pouredMl = rows.map((row) => (totalMl * row.parts) / all);
    const t = warmth(ask.celsius, tools);
    const used = rows.flatMap((row, i) =>
      row.parts > 0
        ? [{ ml: measuredMl(`v${i}`, pouredMl[i] ?? 0, tools), abv: labelled(`s${i}`, row.abv20, tools) }]
        : [],
    );
    const inputs = [...used.flatMap(({ ml, abv }) => [ml, abv]), t];
    const mixed = (valueOf: (id: string) => number): Mixture =>
      mix(
        used.map(({ ml, abv }) => {
          const strength = abv20(valueOf(abv.id));
          const volumeMl = volumeAt20FromVolumeAt(
            millilitresRead(valueOf(ml.id)),
            celsius(valueOf(t.id)),
            strength,
          );
          return { volumeMl, abv20: strength };
        }),
      );
    const figure = (of: "abv20" | "proof60F" | "volumeMl"): Told =>
      told(
        propagate((valueOf) => mixed(valueOf)[of], inputs),
        tools,
      );
    const mixture = mixed((id) => inputs.find((input) => input.id === id)?.value ?? 0);
    return {
      ok: true,
      mixture,
      strength: figure("abv20"),
      proof: figure("proof60F"),
      volume: figure("volumeMl"),
      readMl: volumeAtFromVolumeAt20(millilitres20(mixture.volumeMl), celsius(ask.celsius), mixture.abv20),
      pouredMl,
    };
  });
}
