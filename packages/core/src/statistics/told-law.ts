import { type CountLaw, countLaw } from "./count-law.ts";
import { type LabelCounts, size } from "./match-law.ts";
import { polynomialProduct } from "./rook-polynomial.ts";

/**
 * The exact law of the number of right labels when the true label of each object is told as soon as it is guessed, and every
 * guess is a random one of the slots still open.
 *
 * The objects come in the given order. Telling a label closes one of its slots, so the guess at object i is right with (open slots
 * of its label)/(m − i + 1), whatever was guessed before: independent, not alike. With n different labels and no others the cases
 * are the Stirling cycle numbers (OEIS A132393). A label that is not offered can't be right and closes a slot of nobody's.
 *
 * Accuracy: exact integers.
 *
 * @throws RangeError when there are more objects than slots or more of a label than offered
 * @example toldLaw(["a", "b", "c"], { a: 1, b: 1, c: 1 }).exactly // [0n, 2n, 3n, 1n]
 */
export function toldLaw(order: readonly string[], columns: LabelCounts): CountLaw {
  const open = new Map(Object.entries(columns));
  let left = size("columns", columns);
  return countLaw(
    order
      .map((label) => {
        const slots = open.get(label) ?? 0;
        if (slots < 1) {
          throw new RangeError(`toldLaw requires an open slot for every object, got none for "${label}"`);
        }
        const factor = [BigInt(left - slots), BigInt(slots)];
        open.set(label, slots - 1);
        left -= 1;
        return factor;
      })
      .reduce<readonly bigint[]>(polynomialProduct, [1n]),
  );
}

/**
 * The same for somebody shrewd, who always names a label with most slots open: the strategy with the highest expected number right.
 * The n objects are a random draw of the m slots. Where every label is offered once it is the law of `toldLaw`.
 *
 * Accuracy: exact integers. Cost: one state for each way to close slots, sorted; a dozen objects take milliseconds.
 *
 * @throws RangeError unless 0 <= n <= m is whole
 * @example shrewdToldLaw(2, { a: 2, b: 1 }).exactly // [1n, 3n, 2n]: of 6 draws
 */
export function shrewdToldLaw(n: number, columns: LabelCounts): CountLaw {
  const m = size("columns", columns);
  if (!Number.isInteger(n) || n < 0 || n > m) {
    throw new RangeError(`shrewdToldLaw requires a whole number of objects from 0 to ${m}, got ${n}`);
  }
  const start = Object.values(columns).toSorted((a, b) => b - a);
  let states = new Map([[start.join(), { open: start, right: [1n] as readonly bigint[] }]]);
  for (let i = 0; i < n; i += 1) {
    const next: typeof states = new Map();
    for (const { open, right } of states.values()) {
      open.forEach((slots, label) => {
        if (slots === 0) return;
        const left = open.map((count, j) => (j === label ? count - 1 : count)).toSorted((a, b) => b - a);
        // The first is the most plentiful; among equals it does not matter which is named.
        const gained = right.map((ways) => ways * BigInt(slots));
        const shifted = label === 0 ? [0n, ...gained] : gained;
        const found = next.get(left.join());
        const merged = Array.from(
          { length: Math.max(shifted.length, found?.right.length ?? 0) },
          (_, k) => (shifted[k] ?? 0n) + (found?.right[k] ?? 0n),
        );
        next.set(left.join(), { open: left, right: merged });
      });
    }
    states = next;
  }
  const total: bigint[] = [];
  for (const { right } of states.values()) right.forEach((ways, k) => (total[k] = (total[k] ?? 0n) + ways));
  return countLaw(total);
}
