import { giveOrTake, headline, type Share, type Uncertain } from "@partsproof/core/uncertainty";
import type { Tools } from "./tools.ts";

/** A figure as it is said: "54.4", give or take "0.3", and where that comes from. */
export interface Told {
  readonly value: string;
  readonly by: string;
  /** "the label, not the thermometer"; "" where nothing is uncertain. */
  readonly from: string;
  readonly budget: readonly Share[];
  readonly exact: number;
  readonly low: number;
  readonly high: number;
}

export function told(of: Uncertain, { measure }: Pick<Tools, "measure">): Told {
  const { value, by } = giveOrTake(of);
  // Core names cylinders only; a jug is called what it is.
  const named = (text: string): string =>
    measure === "jug" ? text.replace("the measuring cylinder", "the jug") : text;
  const [low, high] = of.interval95;
  return {
    // A give of 10 or more rounds the value to tens; a value is never "-0".
    value: Number(value) === 0 ? value.replace("-", "") : value,
    by,
    from: named(headline(of.budget)),
    budget: of.budget.map((share) => ({ ...share, words: named(share.words) })),
    exact: of.value,
    low,
    high,
  };
}
