import type { CountLaw } from "./count-law.ts";
import { hitsLaw } from "./hits-law.ts";
import { polynomialProduct, rookPolynomial } from "./rook-polynomial.ts";

export type LabelCounts = Readonly<Record<string, number>>;

/** How many objects or slots there are. */
export function size(what: string, counts: LabelCounts): number {
  return Object.entries(counts).reduce((sum, [label, count]) => {
    if (Number.isSafeInteger(count) && count >= 0) return sum + count;
    throw new RangeError(
      `a law of labels requires whole counts >= 0 in ${what}, got ${count} for "${label}"`,
    );
  }, 0);
}

/**
 * The exact law of the number of right labels when someone labels at random.
 *
 * There are n objects whose true labels are the multiset `rows`, and m >= n label slots, the multiset `columns`
 * (a label offered twice has two slots). The labeller puts a different slot on each object, every way being
 * equally likely, and an object is right when its slot bears its true label: two slots of one label are
 * interchangeable, so two objects of one label swapped are both right. Labels in `columns` only are
 * distractors; labels in `rows` only can never be right.
 *
 * Ways with exactly j right = Σ_{k>=j} (−1)^(k−j) C(k,j) r_k (m−k)!/(m−n)!, where Σ r_k x^k is the product over
 * labels of the rook polynomials of (times in rows) by (times in columns) boards; all ways = m!/(m−n)!.
 * Sources: Riordan, An Introduction to Combinatorial Analysis (1958), ch. 7 (rook polynomials, restricted
 * positions); with n = m different labels it is the classical matching law (rencontres numbers, OEIS A008290).
 *
 * Accuracy: exact integers. Cost grows about as n³; 60 objects take milliseconds.
 *
 * @throws RangeError when a count is not whole or is negative, or fewer slots are offered than there are objects
 * @example matchLaw({ rows: { a: 1, b: 1, c: 1 }, columns: { a: 1, b: 1, c: 1 } }).exactly // [2n, 3n, 0n, 1n]
 */
export function matchLaw({ rows, columns }: { rows: LabelCounts; columns: LabelCounts }): CountLaw {
  const n = size("rows", rows);
  const m = size("columns", columns);
  if (m < n)
    throw new RangeError(`matchLaw requires at least as many slots as objects (${n}), got ${m} slots`);
  const placed = Object.entries(rows)
    .map(([label, count]) => rookPolynomial(count, Object.hasOwn(columns, label) ? (columns[label] ?? 0) : 0))
    .reduce(polynomialProduct, [1n]);
  return hitsLaw(placed, n, m);
}
