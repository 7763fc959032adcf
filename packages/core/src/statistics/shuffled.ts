import type { Rng } from "./rng.ts";

/**
 * The items in random order, each order as likely as the others; the input is left alone.
 *
 * Source: Fisher and Yates; Durstenfeld, Algorithm 235, Comm. ACM 7 (1964) 420.
 *
 * @example shuffled([1, 2, 3], rng)
 */
export function shuffled<T>(items: readonly T[], rng: Rng): T[] {
  const left = [...items];
  return items.map(() => left.splice(rng.below(left.length), 1)[0] as T);
}
