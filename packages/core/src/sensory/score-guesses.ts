import type { Guesses } from "./check-guesses.ts";

export interface Confusion {
  readonly truth: string;
  readonly guess: string;
  /** How many glasses of `truth` were called `guess`. */
  readonly times: number;
}

export interface GuessScore {
  readonly right: number;
  /** Glasses with a guess; the others count neither right nor wrong. */
  readonly guessed: number;
  /** One an ordered pair of names mixed up, in the order first met. */
  readonly confusions: readonly Confusion[];
}

/**
 * Counts the guesses that name what was in the glass. Two glasses of the same name are interchangeable: swapped,
 * both are right, because only names are compared.
 *
 * @param truth the name in each glass
 * @param guesses the guess for each glass, same order and length
 * @throws RangeError when the lengths differ
 * @example scoreGuesses({ truth: ["A", "B", "A"], guesses: ["A", "A", null] })
 * // { right: 1, guessed: 2, confusions: [{ truth: "B", guess: "A", times: 1 }] }
 */
export function scoreGuesses({ truth, guesses }: { truth: readonly string[]; guesses: Guesses }): GuessScore {
  if (truth.length !== guesses.length) {
    throw new RangeError(`scoreGuesses requires ${truth.length} guesses, got ${guesses.length} guesses`);
  }
  const pairs = truth.flatMap((name, i) => {
    const guess = guesses[i] ?? null;
    return guess === null ? [] : [{ truth: name, guess }];
  });
  const wrong = new Map<string, Confusion>();
  for (const { truth: name, guess } of pairs) {
    if (name === guess) continue;
    const key = JSON.stringify([name, guess]);
    wrong.set(key, { truth: name, guess, times: (wrong.get(key)?.times ?? 0) + 1 });
  }
  const confusions = [...wrong.values()];
  const missed = confusions.reduce((sum, { times }) => sum + times, 0);
  return { right: pairs.length - missed, guessed: pairs.length, confusions };
}
