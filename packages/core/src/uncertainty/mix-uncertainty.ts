import { mix } from "../alcoholometry/index.ts";
import type { Mixture } from "../alcoholometry/index.ts";
import type { Abv20, Millilitres20 } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/** One pour by volume at 20 °C. */
export type UncertainPour = { readonly volumeMl: Input; readonly abv20: Input };

/** Which figure of a mixture. */
export type MixtureFigure = "abv20" | "proof60F" | "volumeMl" | "massG" | "contractionMl";

/**
 * One figure of `mix` with its uncertainty, from what the volumes and strengths were read from.
 *
 * The density formula's own error (a few 0.001 % vol) is not counted; dissolved solids are not known of.
 *
 * Domain: that of `mix`. Accuracy: that of `propagate`. Source: as `mix` and `propagate`. Cost: about 1 ms.
 *
 * @throws RangeError as `mix` and `propagate` do.
 * @example
 * const volume = (id, ml) => cylinderVolume({ id, ml, class: "A" });
 * const label = (id, abv) => labelStrength({ id, abv20: abv20(abv) });
 * const pours = [{ volumeMl: volume("v1", 50), abv20: label("l1", 62.4) }, { volumeMl: volume("v2", 25), abv20: label("l2", 46) }];
 * mixUncertainty(pours, "abv20").standardUncertainty; // 0.13…
 */
export function mixUncertainty(pours: readonly UncertainPour[], figure: MixtureFigure): Uncertain {
  return propagate(
    (valueOf) => mixtureOf(pours, valueOf)[figure],
    pours.flatMap((pour) => [pour.volumeMl, pour.abv20]),
  );
}

function mixtureOf(pours: readonly UncertainPour[], valueOf: (id: string) => number): Mixture {
  return mix(
    pours.map((pour) => ({
      volumeMl: valueOf(pour.volumeMl.id) as Millilitres20,
      abv20: valueOf(pour.abv20.id) as Abv20,
    })),
  );
}
