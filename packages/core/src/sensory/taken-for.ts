import { confusionLaw, type CountLaw, holm, poolLaws } from "../statistics/index.ts";
import { checkGuesses, type Guesses, type Offer } from "./check-guesses.ts";

/** One taster's guesses on one flight. */
export interface GuessSheet {
  readonly truth: readonly string[];
  readonly guesses: Guesses;
  readonly offer: Offer;
}

export interface TakenFor {
  readonly pair: readonly [string, string];
  /** Glasses of the first called the second, and the other way round. */
  readonly there: number;
  readonly back: number;
  /** Glasses of the two that could have been mixed up: guessed (and, given the right ones, guessed wrong). */
  readonly glasses: number;
  /** How many mix-ups luck alone gives on average. */
  readonly expected: number;
  /** P(so many or more by luck), one-sided, exact. */
  readonly p: number;
  /** The same made good for all pairs looked at (Holm). */
  readonly pTogether: number;
}

const counted = (names: readonly string[]): Record<string, number> => {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return Object.fromEntries(counts);
};

/** What is left to be labelled by luck: all guessed glasses, or the wrong ones with the names not used up by the right ones. */
function byLuck({ truth, guesses, offer }: GuessSheet, given: "nothing" | "which_were_right") {
  const check = checkGuesses({ offer, guesses });
  if (!check.ok || truth.length !== guesses.length) {
    throw new RangeError(
      `takenFor requires guesses that keep to the offer, got ${check.ok ? `${guesses.length} guesses for ${truth.length} glasses` : `"${check.name}" ${check.used} times`}`,
    );
  }
  const glasses = truth.flatMap((name, i) => {
    const guess = guesses[i] ?? null;
    return guess === null || (given === "which_were_right" && guess === name) ? [] : [{ name, guess }];
  });
  const columns: Record<string, number> = { ...offer };
  if (given === "which_were_right") {
    truth.forEach((name, i) => {
      if (guesses[i] === name) columns[name] = (columns[name] ?? 0) - 1;
    });
  }
  return { glasses, columns };
}

/** The law of one sheet. What the other names are called does not matter, so sheets laid out alike share theirs. */
function sharedLaws() {
  const laws = new Map<string, CountLaw>();
  return (
    rows: Record<string, number>,
    columns: Record<string, number>,
    pair: readonly [string, string],
    noneRight: boolean,
  ): CountLaw => {
    const count = (name: string): string => `${rows[name] ?? 0}/${columns[name] ?? 0}`;
    const others = Object.keys({ ...rows, ...columns }).filter((name) => !pair.includes(name));
    const key = [...pair.map(count), ...others.map(count).toSorted()].join();
    const law = laws.get(key) ?? confusionLaw({ rows, columns, pair, noneRight });
    laws.set(key, law);
    return law;
  };
}

/**
 * Which whiskeys were taken for each other more often than luck would have it, pooled over sheets, every pair tested.
 *
 * - given `which_were_right` (the default): the right glasses are set aside; the names left over fall on the wrong glasses at random,
 *   but never rightly. A small p says that these two, of all, get mixed up.
 * - given `nothing`: all guesses fall at random. A small p says that the two are mixed up more often than by somebody who knows nothing.
 *
 * Sheets are independent and filled by luck under the claim refuted; the law of each is exact and they are pooled by convolution.
 * Pairs are those with a glass guessed on some sheet and the other name on offer there; `pTogether` pays for looking at all of them.
 *
 * @param of only the pairs with this name; then only these are looked at and paid for
 * @throws RangeError when guesses break the offer
 * @example takenFor([{ truth: ["A", "B", "C"], guesses: ["B", "A", "C"], offer: { A: 1, B: 1, C: 1 } }])
 */
export function takenFor(
  sheets: readonly GuessSheet[],
  given: "nothing" | "which_were_right" = "which_were_right",
  of?: string,
): TakenFor[] {
  const lawOf = sharedLaws();
  const parts = sheets.map((sheet) => byLuck(sheet, given));
  const names = [...new Set(sheets.flatMap(({ truth }) => truth))].toSorted();
  const pairs = names.flatMap((a, i) =>
    names
      .slice(i + 1)
      .filter((b) => of === undefined || a === of || b === of)
      .map((b) => [a, b] as const),
  );
  const found = pairs.flatMap((pair) => {
    const [a, b] = pair;
    const all = parts.flatMap(({ glasses }) => glasses);
    const there = all.filter(({ name, guess }) => name === a && guess === b).length;
    const back = all.filter(({ name, guess }) => name === b && guess === a).length;
    const could = parts.filter(({ glasses, columns }) =>
      glasses.some(
        ({ name }) => (name === a && (columns[b] ?? 0) > 0) || (name === b && (columns[a] ?? 0) > 0),
      ),
    );
    if (could.length === 0) return [];
    const law = poolLaws(
      could.map(({ glasses, columns }) =>
        lawOf(counted(glasses.map(({ name }) => name)), columns, pair, given === "which_were_right"),
      ),
    );
    const glasses = could
      .flatMap((part) => part.glasses)
      .filter(({ name }) => name === a || name === b).length;
    return [{ pair, there, back, glasses, expected: law.mean, p: law.pAtLeast(there + back) }];
  });
  const together = holm(found.map(({ p }) => p));
  return found.map((one, i) => ({ ...one, pTogether: together[i] ?? 1 }));
}
