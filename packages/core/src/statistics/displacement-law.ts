import { binomial } from "./binomial.ts";
import { type CountLaw, countLaw } from "./count-law.ts";
import { factorial } from "./factorial.ts";

/** Ways to put k rooks on the cells (i, j) of an n by n board with |i - j| <= reach, for k = 0 … n. */
function bandRooks(n: number, reach: number): bigint[] {
  const width = 2 * reach + 1;
  // State: which columns i - reach … i + reach are taken, as bits; columns off the board count as taken.
  let states = new Map<number, bigint[]>([[0, [1n]]]);
  for (let i = 0; i < n; i += 1) {
    const next = new Map<number, bigint[]>();
    const add = (mask: number, counts: readonly bigint[], more: 0 | 1): void => {
      const sum = next.get(mask >> 1) ?? [];
      counts.forEach((ways, k) => (sum[k + more] = (sum[k + more] ?? 0n) + ways));
      next.set(
        mask >> 1,
        Array.from(sum, (ways) => ways ?? 0n),
      );
    };
    for (const [mask, counts] of states) {
      add(mask, counts, 0);
      for (let bit = 0; bit < width; bit += 1) {
        const column = i - reach + bit;
        if (column >= 0 && column < n && (mask & (1 << bit)) === 0) add(mask | (1 << bit), counts, 1);
      }
    }
    states = next;
  }
  const rooks = Array.from({ length: n + 1 }, () => 0n);
  for (const counts of states.values()) counts.forEach((ways, k) => (rooks[k] = (rooks[k] ?? 0n) + ways));
  return rooks;
}

/**
 * The exact law of how many of n things in a row a random permutation leaves within `reach` places of where they were
 * (0: in their place; 1: in it or next to it), every permutation being equally likely.
 *
 * Permutations with exactly j such things = Σ_{k>=j} (−1)^(k−j) C(k,j) r_k (n−k)!, r the rook numbers of the band board.
 * Sources: Riordan, An Introduction to Combinatorial Analysis (1958), ch. 7-8. For reach 0 these are the rencontres numbers
 * (OEIS A008290); for reach 1 none at all is OEIS A001883 and all of them the Fibonacci numbers F(n+1) (OEIS A000045).
 *
 * Domain: whole n 0 to 60, whole reach 0 to 5. Accuracy: exact.
 *
 * @throws RangeError outside that domain
 * @example displacementLaw(3, 1).exactly // [0n, 1n, 2n, 3n]
 */
export function displacementLaw(n: number, reach: number): CountLaw {
  if (!Number.isInteger(n) || n < 0 || n > 60) {
    throw new RangeError(`displacementLaw requires a whole n from 0 to 60, got ${n}`);
  }
  if (!Number.isInteger(reach) || reach < 0 || reach > 5) {
    throw new RangeError(`displacementLaw requires a whole reach from 0 to 5, got ${reach}`);
  }
  const ways = bandRooks(n, reach).map((rooks, k) => rooks * factorial(n - k));
  return countLaw(
    Array.from({ length: n + 1 }, (_, j) =>
      ways.reduce((sum, w, k) => (k < j ? sum : sum + ((k - j) % 2 === 0 ? w : -w) * binomial(k, j)), 0n),
    ),
  );
}
