import type { Share } from "./budget.ts";
import type { InputKind } from "./input.ts";

const KIND_WORDS: Readonly<Record<InputKind, readonly [one: string, several: string]>> = {
  label: ["the label", "the labels"],
  cylinder: ["the measuring cylinder", "the measuring cylinder"],
  syringe: ["the syringe", "the syringe"],
  scale: ["your scale", "your scale"],
  thermometer: ["the thermometer", "the thermometer"],
  hydrometer: ["the hydrometer", "the hydrometer"],
  other: ["something else", "other things"],
};

/** A kind with at least this part of the variance is named alone. */
const MOST = 2 / 3;

/**
 * Where the uncertainty comes from, in plain words: "the label, not your scale", or "the labels and the measuring cylinder"
 * when no kind of thing has two thirds of the variance. Empty when nothing is uncertain.
 *
 * Domain: any budget. Accuracy: two thirds is this project's own line for "most of it". Source: common practice, no
 * source. Cost: nothing.
 *
 * @example
 * headline([{ input: "a", kind: "label", share: 0.9, words: "the label" }, { input: "b", kind: "scale", share: 0.1, words: "your scale" }]); // "the label, not your scale"
 */
export function headline(budget: readonly Share[]): string {
  const kinds = new Map<InputKind, { share: number; count: number }>();
  for (const { kind, share } of budget) {
    const known = kinds.get(kind) ?? { share: 0, count: 0 };
    kinds.set(kind, { share: known.share + share, count: known.count + 1 });
  }
  const sorted = [...kinds].toSorted(([, a], [, b]) => b.share - a.share);
  const words = sorted.map(([kind, { count }]) => KIND_WORDS[kind][count === 1 ? 0 : 1]);
  const [first, second] = words;
  if (first === undefined || sorted[0]?.[1].share === 0) return "";
  if (second === undefined) return first;
  return (sorted[0]?.[1].share ?? 0) >= MOST ? `${first}, not ${second}` : `${first} and ${second}`;
}
