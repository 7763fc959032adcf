import { binomial } from "./binomial.ts";
import { type CountLaw, countLaw } from "./count-law.ts";
import { factorial } from "./factorial.ts";

/**
 * The law of the number of marked cells met when n objects take different ones of m slots at random, from the rook polynomial of
 * the marked cells.
 *
 * Ways with exactly j = Σ_{k>=j} (−1)^(k−j) C(k,j) r_k (m−k)!/(m−n)!. Exact integers. Source: Riordan 1958, ch. 7 (from memory).
 */
export function hitsLaw(rooks: readonly bigint[], n: number, m: number): CountLaw {
  // ways[k]: k marked cells are taken, the other n − k objects take any of the m − k slots left.
  const ways = rooks.map((r, k) => (r * factorial(m - k)) / factorial(m - n));
  const exactly = Array.from({ length: n + 1 }, (_, j) =>
    ways.reduce((sum, w, k) => (k < j ? sum : sum + ((k - j) % 2 === 0 ? w : -w) * binomial(k, j)), 0n),
  );
  return countLaw(exactly);
}
