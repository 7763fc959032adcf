import { liquidOfVolume, partsToFill } from "@partsproof/core/alcoholometry";
import { type Abv20, abv20, type Millilitres20, millilitres20 } from "@partsproof/core/quantity";
import type { RecipeFile } from "../../protocol/index.ts";

export interface Amount {
  readonly ml: number;
  /** Null where the strength is not known. */
  readonly g: number | null;
}

/** What one litre of the finished blend takes. Any other volume takes so many times as much: mixing knows no size. */
export interface Amounts {
  readonly slots: readonly Amount[];
  readonly water: Amount | null;
  /** Of the finished blend, % vol at 20 °C; null where a strength is not known. */
  readonly abv: number | null;
  /** What could not be reckoned, and why, in words. */
  readonly without: string | null;
}

const LITRE = millilitres20(1000);
const gramsOf = (ml: Millilitres20, abv: Abv20): number => {
  const { ethanolG, waterG } = liquidOfVolume(ml, abv);
  return ethanolG + waterG;
};

/**
 * The amounts for a litre, contraction counted, as `partsToFill` has them; where a strength is not known, by parts alone.
 *
 * @example amountsOf(recipe).slots[0].ml * 0.7 // mL of the first slot for 700 mL
 */
export function amountsOf({ slots, waterTo }: RecipeFile): Amounts {
  const unknown = slots.findIndex(({ whiskey }) => whiskey?.abv === undefined);
  if (unknown >= 0)
    return byParts(
      slots,
      `The strength of slot ${unknown + 1} is not known, so these are parts of the volume alone: no contraction and no water is reckoned.`,
    );
  const parts = slots.map(({ parts: own, whiskey }) => ({ parts: own, abv20: abv20(whiskey!.abv!) }));
  const asked = waterTo === undefined ? {} : { to: abv20(waterTo) };
  const filled = partsToFill({ parts, finalMl: LITRE, ...asked });
  if (filled.ok) {
    const { pours, reducing, mixture } = filled;
    const amount = ({ volumeMl, abv20: abv }: (typeof pours)[number]): Amount => ({
      ml: volumeMl,
      g: gramsOf(volumeMl, abv),
    });
    return {
      slots: pours.slice(0, slots.length).map(amount),
      water: reducing === null ? null : amount(reducing),
      abv: mixture.abv20,
      without: null,
    };
  }
  const dry = amountsOf({ format: "parts-and-proof/recipe", version: 1, name: "", slots });
  return {
    ...dry,
    without: `Water cannot take it to ${waterTo} % vol: it is ${dry.abv?.toFixed(1)} % vol. None is reckoned.`,
  };
}

function byParts(slots: RecipeFile["slots"], without: string): Amounts {
  const all = slots.reduce((sum, { parts }) => sum + parts, 0);
  return {
    slots: slots.map(({ parts, whiskey }) => {
      const ml = millilitres20((1000 * parts) / all);
      return { ml, g: whiskey?.abv === undefined ? null : gramsOf(ml, abv20(whiskey.abv)) };
    }),
    water: null,
    abv: null,
    without,
  };
}
