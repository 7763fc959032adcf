import { binomial } from "./binomial.ts";
import { type CountLaw, countLaw } from "./count-law.ts";
import { factorial } from "./factorial.ts";
import { hitsLaw } from "./hits-law.ts";
import { type LabelCounts, size } from "./match-law.ts";
import { polynomialProduct, rookPolynomial } from "./rook-polynomial.ts";

const times = (counts: LabelCounts, label: string): number =>
  Object.hasOwn(counts, label) ? (counts[label] ?? 0) : 0;

/** a·(a − 1)·… , k factors. */
const falling = (a: number, k: number): bigint => (k > a ? 0n : factorial(a) / factorial(a - k));

/** Ways to choose i, then j others, of n. */
const split = (n: number, i: number, j: number): bigint =>
  i + j > n ? 0n : binomial(n, i) * binomial(n - i, j);

/** Rooks on the four blocks of labels a and b: `[right][mixed]` ways with so many on the two right blocks and on the two mixed. */
function pairRooks(ra: number, rb: number, ca: number, cb: number): bigint[][] {
  const ways: bigint[][] = Array.from({ length: ra + rb + 1 }, () =>
    Array.from({ length: ra + rb + 1 }, () => 0n),
  );
  for (let aa = 0; aa <= ra; aa += 1) {
    for (let ab = 0; ab <= ra - aa; ab += 1) {
      for (let bb = 0; bb <= rb; bb += 1) {
        for (let ba = 0; ba <= rb - bb; ba += 1) {
          const rows = split(ra, aa, ab) * split(rb, bb, ba);
          const here = ways[aa + bb] as bigint[];
          here[ab + ba] = (here[ab + ba] as bigint) + rows * falling(ca, aa + ba) * falling(cb, bb + ab);
        }
      }
    }
  }
  return ways;
}

/**
 * The exact law of how often two labels are taken for each other (a called b, and b called a) when someone labels at random.
 *
 * Objects and slots as in `matchLaw`. With `noneRight` only the ways in which no object gets its true label are counted: the law
 * of the mix-ups among objects that are known to have been labelled wrong. Rook polynomials with two weights (restricted
 * positions; Riordan 1958, ch. 7 and 8, from memory).
 *
 * Accuracy: exact integers.
 *
 * @throws RangeError when the two labels are the same, fewer slots are offered than objects, or (with `noneRight`) no way is left
 * @example
 * const three = { a: 1, b: 1, c: 1 };
 * confusionLaw({ rows: three, columns: three, pair: ["a", "b"] }).exactly // [3n, 2n, 1n, 0n]
 */
export function confusionLaw({
  rows,
  columns,
  pair: [a, b],
  noneRight = false,
}: {
  readonly rows: LabelCounts;
  readonly columns: LabelCounts;
  readonly pair: readonly [string, string];
  readonly noneRight?: boolean;
}): CountLaw {
  const n = size("rows", rows);
  const m = size("columns", columns);
  if (a === b) throw new RangeError(`confusionLaw requires two different labels, got "${a}" twice`);
  if (m < n)
    throw new RangeError(`confusionLaw requires at least as many slots as objects (${n}), got ${m} slots`);
  const [ra, rb, ca, cb] = [times(rows, a), times(rows, b), times(columns, a), times(columns, b)];
  if (!noneRight) return hitsLaw(polynomialProduct(rookPolynomial(ra, cb), rookPolynomial(rb, ca)), n, m);
  const others = Object.keys(rows)
    .filter((label) => label !== a && label !== b)
    .map((label) => rookPolynomial(times(rows, label), times(columns, label)))
    .reduce(polynomialProduct, [1n]);
  // signed[l]: l mixed-up cells are taken, right ones are excluded by inclusion and exclusion.
  const signed = Array.from({ length: ra + rb + 1 }, () => 0n);
  pairRooks(ra, rb, ca, cb).forEach((byMixed, right) =>
    byMixed.forEach((ways, mixed) =>
      others.forEach((rest, k) => {
        const taken = right + mixed + k;
        if (taken > n || ways === 0n) return;
        const free = factorial(m - taken) / factorial(m - n);
        signed[mixed] = (signed[mixed] as bigint) + ((right + k) % 2 === 0 ? 1n : -1n) * ways * rest * free;
      }),
    ),
  );
  const exactly = signed.map((_, j) =>
    signed.reduce((sum, w, l) => (l < j ? sum : sum + ((l - j) % 2 === 0 ? w : -w) * binomial(l, j)), 0n),
  );
  if (exactly.every((ways) => ways === 0n)) {
    throw new RangeError("confusionLaw requires a way to label every object wrong, got none");
  }
  return countLaw(exactly);
}
