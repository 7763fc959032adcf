import { type CountLaw, matchLaw } from "../statistics/index.ts";
import { checkGuesses, type Guesses, type Offer } from "./check-guesses.ts";
import { type GuessScore, scoreGuesses } from "./score-guesses.ts";

export interface Identification extends GuessScore {
  /** The exact law of the number right for somebody who guesses the same glasses at random. */
  readonly law: CountLaw;
  /** P(as many right or more) under that law: one-sided, the observed count included. */
  readonly pAtLeast: number;
}

function countsOf(names: readonly string[]): Record<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return Object.fromEntries(counts);
}

/**
 * How many glasses one sheet named right, and how well guessing at random would do.
 *
 * Luck is a taster who puts the names on offer on the guessed glasses at random, each name at most as often as it
 * is offered. Glasses without a guess are left out of the count and of the law. A name in a glass that is not
 * offered can't be guessed right, by anybody. With no guess at all, 0 of 0 are right and `pAtLeast` is 1.
 *
 * @param truth the name in each glass
 * @param guesses the guess for each glass, null for none; must pass `checkGuesses`
 * @param offer how often each name may be used
 * @throws RangeError when guesses and glasses differ in number or a guess breaks the offer (check first)
 * @example
 * identification({ truth: ["A", "B", "C"], guesses: ["A", "B", "C"], offer: { A: 1, B: 1, C: 1 } }).pAtLeast
 * // 0.16666666666666666, that is 1 in 6
 */
export function identification({
  truth,
  guesses,
  offer,
}: {
  truth: readonly string[];
  guesses: Guesses;
  offer: Offer;
}): Identification {
  const score = scoreGuesses({ truth, guesses });
  const check = checkGuesses({ offer, guesses });
  if (!check.ok) {
    throw new RangeError(
      `identification requires "${check.name}" at most ${check.offered} times, got ${check.used} times`,
    );
  }
  const guessedTruth = truth.filter((_, glass) => (guesses[glass] ?? null) !== null);
  const law = matchLaw({ rows: countsOf(guessedTruth), columns: offer });
  return { ...score, law, pAtLeast: law.pAtLeast(score.right) };
}
