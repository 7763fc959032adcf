import { type Pour, volumeAt20FromVolumeAt, volumeAtFromVolumeAt20 } from "@partsproof/core/alcoholometry";
import { exactSum } from "@partsproof/core/numeric";
import {
  type Abv20,
  type Celsius,
  type Millilitres20,
  millilitres20,
  millilitresRead,
} from "@partsproof/core/quantity";
import type { StatedStrength } from "../../protocol/index.ts";
import { partsAllZero } from "../refuse.ts";
import { abvOf } from "./stated.ts";

/** Parts scaled so that their volumes, as they are read at `t`, add up to `sumMl`; without `t` at 20 °C. */
export function partsPoured(
  parts: readonly { readonly parts: number; readonly strength: StatedStrength }[],
  sumMl: number,
  t?: Celsius,
): readonly Pour[] {
  const all = exactSum(parts.map((part) => part.parts));
  if (all === 0) partsAllZero(["parts"]);
  return parts.map((part) => {
    const abv20 = abvOf(part.strength);
    return { volumeMl: at20((sumMl * part.parts) / all, abv20, t), abv20 };
  });
}

/** A volume as it was read, at 20 °C. */
export const at20 = (ml: number, abv20: Abv20, t?: Celsius): Millilitres20 =>
  t === undefined ? millilitres20(ml) : volumeAt20FromVolumeAt(millilitresRead(ml), t, abv20);

/** A volume at 20 °C, as it is read. */
export const readAt = (ml: Millilitres20, abv20: Abv20, t: Celsius): number =>
  volumeAtFromVolumeAt20(ml, t, abv20);
