import { mix, volumeAt20FromVolumeAt, volumeFromWeight } from "../alcoholometry/index.ts";
import type { Air, Mixture } from "../alcoholometry/index.ts";
import type { Abv20, Celsius, Grams, MillilitresRead } from "../quantity/index.ts";
import type { Input } from "./input.ts";

/** One pour as it was measured: mL as read at the bench's temperature, or grams as the scale showed them. */
export type MeasuredPour = {
  readonly amount: Input;
  readonly by: "volume" | "weight";
  readonly abv20: Input;
};

/** Where it was measured: the liquids' temperature, and the air if the scale stands in some. */
export type MeasuringBench = { readonly celsius: Input; readonly air?: Air };

/** The mixture that measured pours make when their inputs have these values. */
export function mixtureOfMeasured(
  pours: readonly MeasuredPour[],
  { celsius, air }: MeasuringBench,
  valueOf: (id: string) => number,
): Mixture {
  const t = valueOf(celsius.id) as Celsius;
  const weighing = air === undefined ? { celsius: t } : { celsius: t, air };
  return mix(
    pours.map((pour) => {
      const abv20 = valueOf(pour.abv20.id) as Abv20;
      const amount = valueOf(pour.amount.id);
      const volumeMl =
        pour.by === "volume"
          ? volumeAt20FromVolumeAt(amount as MillilitresRead, t, abv20)
          : volumeFromWeight(amount as Grams, { ...weighing, abv20 }).ml20;
      return { volumeMl, abv20 };
    }),
  );
}

/** The inputs behind measured pours. */
export const inputsOfMeasured = (
  pours: readonly MeasuredPour[],
  { celsius }: MeasuringBench,
): readonly Input[] => [...pours.flatMap((pour) => [pour.amount, pour.abv20]), celsius];
