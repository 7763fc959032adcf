import type { Input, InputKind } from "./input.ts";

/** One input's part in the uncertainty. */
export type Share = {
  readonly input: string;
  readonly kind: InputKind;
  /** Its part of the variance, 0 to 1. */
  readonly share: number;
  readonly words: string;
};

/** The error budget: every input's part of the variance, the largest first. No error at all gives shares of 0. */
export function budgetOf(
  effects: readonly { readonly input: Input; readonly effect: number }[],
): readonly Share[] {
  const variance = effects.reduce((sum, { effect }) => sum + effect * effect, 0);
  return effects
    .map(({ input, effect }) => ({
      input: input.id,
      kind: input.kind,
      share: variance === 0 ? 0 : (effect * effect) / variance,
      words: input.words,
    }))
    .toSorted((a, b) => b.share - a.share);
}
