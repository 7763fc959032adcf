import { pouredByWeight } from "../alcoholometry/index.ts";
import type { Air } from "../alcoholometry/index.ts";
import type { Abv20, Celsius, Grams } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import type { MixtureFigure } from "./mix-uncertainty.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/** One pour by weight, as the scale showed it. */
export type WeighedPour = { readonly grams: Input; readonly abv20: Input };

/**
 * One figure of the mixture that was really poured, from the grams the scale showed: "54.4 %, give or take 0.2, the label, not
 * your scale".
 *
 * Domain: that of `pouredByWeight`. Accuracy: that of `propagate`. Source: as these two. Cost: about 1 ms.
 *
 * @param celsius the liquids' temperature; matters in air only, and there hardly
 * @throws RangeError as `pouredByWeight` and `propagate` do.
 * @example
 * const pour = (id, g, abv) => ({ grams: scaleMass({ id: `${id} g`, g, class: "fine" }), abv20: labelStrength({ id, abv20: abv20(abv) }) });
 * headline(weighedPoursUncertainty([pour("a", 50, 62.4), pour("b", 25, 46)], "abv20").budget); // "the labels, not your scale"
 */
export function weighedPoursUncertainty(
  pours: readonly WeighedPour[],
  figure: MixtureFigure,
  bench: { readonly celsius?: Input; readonly air?: Air } = {},
): Uncertain {
  const { celsius, air } = bench;
  const still = air === undefined ? {} : { air };
  return propagate(
    (valueOf) => {
      const weights = pours.map((pour) => ({
        grams: valueOf(pour.grams.id) as Grams,
        abv20: valueOf(pour.abv20.id) as Abv20,
      }));
      const at = celsius === undefined ? still : { ...still, celsius: valueOf(celsius.id) as Celsius };
      return pouredByWeight(weights, at).mixture[figure];
    },
    [...pours.flatMap((pour) => [pour.grams, pour.abv20]), ...(celsius === undefined ? [] : [celsius])],
  );
}
