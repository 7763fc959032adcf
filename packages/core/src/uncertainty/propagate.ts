import { budgetOf } from "./budget.ts";
import type { Share } from "./budget.ts";
import { coverageHalfWidth } from "./coverage-half-width.ts";
import { distinct } from "./distinct.ts";
import { standardUncertainty } from "./input.ts";
import type { Input, Spread } from "./input.ts";
import type { Model } from "./model.ts";
import { effectOf, resultMovedBy } from "./sensitivity.ts";

/** A result with how far it may be off. */
export type Uncertain = {
  readonly value: number;
  readonly standardUncertainty: number;
  /** Holds the true value in 95 of 100 such cases. */
  readonly interval95: readonly [low: number, high: number];
  /** What it comes from, the largest share first; shares add to 1. */
  readonly budget: readonly Share[];
};

/**
 * Propagates the inputs' errors through a model, by the GUM: to first order, each input's effect taken as half the change of
 * the result between the input one standard uncertainty up and down; the effects of independent inputs add in squares. The
 * 95 % interval is that of the sum of the effects with their own shapes (`coverageHalfWidth`), never 1.96 u for its own sake; its
 * ends are the model's own at the inputs that bring it there, so it is longer on one side where the model bends.
 *
 * Inputs with the same `id` are one input: a label used twice is wrong the same way twice.
 *
 * Accuracy: standard uncertainties and intervals within 2 % of Monte Carlo for the models of this room and instruments of
 * the classes of this room (checked); a model that folds within its inputs' errors needs `monteCarlo`.
 *
 * Source: JCGM 100:2008, 5.1.2, 5.1.3 note 2 (from memory). Cost: two runs of the model per input and three more, and about 1 ms.
 *
 * Domain: that of the model, a little around the inputs' values.
 *
 * @throws RangeError when two inputs share an `id` and differ, or the model throws.
 * @example
 * const label = labelStrength({ id: "rye", abv20: abv20(46) });
 * propagate((valueOf) => 2 * valueOf("rye"), [label]).interval95; // [91.43, 92.57]
 */
export function propagate(model: Model, inputs: readonly Input[]): Uncertain {
  const all = distinct(inputs);
  const value = model((id) => all.get(id)?.value ?? missing(id));
  const effects = [...all.values()].map((input) => ({ input, effect: effectOf(model, all, input) }));
  const variance = effects.reduce((sum, { effect }) => sum + effect * effect, 0);
  const halfWidths: number[] = [];
  let normalVariance = 0;
  for (const { input, effect } of effects) {
    const scale = effect === 0 ? 0 : Math.abs(effect) / standardUncertainty(input);
    for (const spread of input.spreads) {
      if (spread.shape === "normal") normalVariance += (scale * spread.standardDeviation) ** 2;
      else halfWidths.push(...rectanglesOf(spread, scale));
    }
  }
  const half = coverageHalfWidth(halfWidths, Math.sqrt(normalVariance));
  const ends = [resultMovedBy(-half, model, effects), resultMovedBy(half, model, effects)] as const;
  return {
    value,
    standardUncertainty: Math.sqrt(variance),
    interval95: half === 0 ? [value, value] : [Math.min(...ends), Math.max(...ends)],
    budget: budgetOf(effects),
  };
}

/** A triangle is the sum of two rectangles of half its width. */
function rectanglesOf(spread: Exclude<Spread, { shape: "normal" }>, scale: number): readonly number[] {
  const a = scale * spread.halfWidth;
  return spread.shape === "rectangular" ? [a] : [a / 2, a / 2];
}

function missing(id: string): never {
  throw new RangeError(`model requires an input of the list, got ${id}`);
}
