import { adjustStrength, liquidOfVolume } from "../alcoholometry/index.ts";
import type { Abv20, Millilitres20 } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { mixUncertainty } from "./mix-uncertainty.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * What is asked about a reduction: how much to add to land on the target (`addMl`), or where adding a measured amount lands
 * (`abv20`, `finalMl`).
 */
export type ReductionFigure = "addMl" | "abv20" | "finalMl";

/**
 * A figure of taking a liquid to a strength with another (water: a strength of 0), with its uncertainty.
 *
 * For `addMl` the target is exact and what must be added is uncertain, because the start is. For `abv20` and `finalMl` the
 * amount that was worked out is then measured by `measure`, which is as wrong as its instrument, and the strength reached is
 * uncertain.
 *
 * Domain: that of `adjustStrength`. Source: as `adjustStrength` and `propagate`. Cost: about 1 ms.
 *
 * @param measure the instrument for the amount to add, at its value in mL; needed for `abv20` and `finalMl`
 * @throws RangeError when the target does not lie between the two strengths, or as `propagate` does.
 * @example
 * const volumeMl = cylinderVolume({ id: "v", ml: 500, class: "B" });
 * const start = labelStrength({ id: "start", abv20: abv20(62.4) });
 * const water = labelStrength({ id: "water", abv20: abv20(0), rule: "exact" });
 * const measure = (ml) => cylinderVolume({ id: "water ml", ml, class: "B" });
 * reduceUncertainty({ volumeMl, start, add: water, to: abv20(46), measure }, "abv20").standardUncertainty; // 0.168…
 */
export function reduceUncertainty(
  ask: {
    readonly volumeMl: Input;
    readonly start: Input;
    readonly add: Input;
    readonly to: Abv20;
    readonly measure?: (ml: number) => Input;
  },
  figure: ReductionFigure,
): Uncertain {
  const { volumeMl, start, add, to } = ask;
  const addMl = (ml: number, abv: number, added: number): number => {
    const answer = adjustStrength({
      start: liquidOfVolume(ml as Millilitres20, abv as Abv20),
      to,
      add: added as Abv20,
    });
    if (!answer.ok) throw new RangeError(answer.issue.message);
    return answer.addMl;
  };
  if (figure === "addMl") {
    return propagate(
      (valueOf) => addMl(valueOf(volumeMl.id), valueOf(start.id), valueOf(add.id)),
      [volumeMl, start, add],
    );
  }
  if (ask.measure === undefined)
    throw new RangeError(`${figure} requires a measure for what is added, got none`);
  const measured = ask.measure(addMl(volumeMl.value, start.value, add.value));
  return mixUncertainty(
    [
      { volumeMl, abv20: start },
      { volumeMl: measured, abv20: add },
    ],
    figure === "abv20" ? "abv20" : "volumeMl",
  );
}
