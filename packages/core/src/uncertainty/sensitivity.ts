import { standardUncertainty } from "./input.ts";
import type { Input } from "./input.ts";
import type { Model } from "./model.ts";

/**
 * What one standard uncertainty of an input does to the result: half the difference between the input that much up and that
 * much down (JCGM 100:2008, 5.1.3 note 2). At an end of the input's range the step is taken to the inside only.
 */
export function effectOf(model: Model, all: ReadonlyMap<string, Input>, input: Input): number {
  const u = standardUncertainty(input);
  if (u === 0) return 0;
  const at = (x: number): number => model((id) => (id === input.id ? x : (all.get(id) as Input).value));
  const up = Math.min(input.high, input.value + u);
  const down = Math.max(input.low, input.value - u);
  return ((at(up) - at(down)) / (up - down)) * u;
}

/**
 * The result where the effects together move it by `by`, to first order: every input moved by its likeliest part in such a sum,
 * which is its share of the variance. For one input that is all of the uncertainty, and so exact.
 */
export function resultMovedBy(
  by: number,
  model: Model,
  effects: readonly { readonly input: Input; readonly effect: number }[],
): number {
  const variance = effects.reduce((sum, { effect }) => sum + effect * effect, 0);
  const places = new Map(
    effects.map(({ input, effect }) => {
      const x = input.value + (by * effect * standardUncertainty(input)) / variance;
      // Effects too small to be squared move nothing.
      const moved = effect === 0 || variance === 0 ? input.value : x;
      return [input.id, Math.min(input.high, Math.max(input.low, moved))];
    }),
  );
  return model((id) => places.get(id) as number);
}
