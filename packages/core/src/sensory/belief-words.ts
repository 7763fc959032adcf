/** From this probability on a difference is called so; below the last neither is called better. */
export const BELIEF_WORDS = [
  { from: 0.99, word: "almost surely" },
  { from: 0.95, word: "very likely" },
  { from: 0.8, word: "likely" },
  { from: 0.6, word: "perhaps" },
] as const;

export interface Belief {
  /** Probability that the one named is better (or best). */
  readonly probability: number;
  /** What drawing leaves open, one standard error. */
  readonly monteCarloError: number;
  readonly sheets: number;
  /** What the sheets are where they are none, such as "comparison". */
  readonly unit?: string;
  /** Of a pair: on how many of them both stand, where that is not all. */
  readonly both?: number;
}

/** Two decimals, and never a certainty that no sheets can give. */
export const shownProbability = (p: number): string =>
  p > 0.99 ? "more than 0.99" : p < 0.01 ? "less than 0.01" : p.toFixed(2);

/** The word for a probability; within two drawing errors of a threshold the weaker word is taken. */
function wordFor({ probability, monteCarloError }: Belief): string | null {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`a belief requires a probability from 0 to 1, got ${probability}`);
  }
  const sure = probability - 2 * monteCarloError;
  return BELIEF_WORDS.find(({ from }) => sure >= from)?.word ?? null;
}

/** What better and best mean where glasses are not put in order of liking: "closer to the Lamp", "the closest to the Lamp". */
export interface BeliefSense {
  readonly better: string;
  readonly best: string;
  /** Where given the one named first stays the one spoken of, and is called this where it is the worse. */
  readonly worse?: string;
}
const LIKING: BeliefSense = { better: "better liked", best: "the best liked" };

const sheetsOf = ({ sheets, unit = "sheet", both = sheets }: Belief): string =>
  `${sheets} ${unit}${sheets === 1 ? "" : "s"}${both < sheets ? `, both in ${both}` : ""}`;
const theseOf = ({ sheets, unit = "sheet" }: Belief): string =>
  sheets === 1 ? `This ${unit} does` : `These ${unit}s do`;
const methodOf = ({ unit = "ranking" }: Belief): string => `Bayesian worths from ${unit}s`;

/**
 * Which of two glasses is better liked, in plain words and always with the number and the method.
 *
 * Words from 0.99 "almost surely", 0.95 "very likely", 0.8 "likely", 0.6 "perhaps"; below, neither is called better. The thresholds
 * are this project's; 0.95 is the customary level. The probability says which is better, not by how much.
 *
 * @example
 * betterWords("Glass 3", "Glass 1", { probability: 0.87, monteCarloError: 0.005, sheets: 6 })
 * // "Glass 3 is likely better liked than Glass 1 (probability 0.87, Bayesian worths from rankings, 6 sheets)."
 */
export function betterWords(one: string, other: string, belief: Belief, sense: BeliefSense = LIKING): string {
  if (belief.probability < 0.5) {
    const turned = { ...belief, probability: 1 - belief.probability };
    const { worse } = sense;
    return worse === undefined || wordFor(turned) === null
      ? betterWords(other, one, turned, sense)
      : `${one} is ${wordFor(turned)} ${worse} than ${other} (probability ${shownProbability(turned.probability)}, ${methodOf(belief)}, ${sheetsOf(belief)}).`;
  }
  const word = wordFor(belief);
  const shown = shownProbability(belief.probability);
  const how = `${methodOf(belief)}, ${sheetsOf(belief)}`;
  return word === null
    ? `${theseOf(belief)} not say which of ${one} and ${other} is ${sense.better} (probability ${shown} for ${one}, ${how}).`
    : `${one} is ${word} ${sense.better} than ${other} (probability ${shown}, ${how}).`;
}

/**
 * Whether the front runner is the best liked of all, in plain words: a probability that pays for having looked at all of them, because the
 * best of several by luck is no stranger than any other.
 *
 * @param glasses how many there are to be best of
 * @example
 * bestWords("Glass 3", 5, { probability: 0.62, monteCarloError: 0.005, sheets: 6 })
 * // "Glass 3 is perhaps the best liked of the 5 (probability 0.62, by luck 0.20; Bayesian worths from rankings, 6 sheets)."
 */
export function bestWords(one: string, glasses: number, belief: Belief, sense: BeliefSense = LIKING): string {
  if (!Number.isInteger(glasses) || glasses < 2)
    throw new RangeError(`bestWords requires 2 glasses or more, got ${glasses}`);
  const word = wordFor(belief);
  const how = `probability ${shownProbability(belief.probability)}, by luck ${(1 / glasses).toFixed(2)}; ${methodOf(belief)}, ${sheetsOf(belief)}`;
  return word === null
    ? `${theseOf(belief)} not say which of the ${glasses} is ${sense.best}; the likeliest is ${one} (${how}).`
    : `${one} is ${word} ${sense.best} of the ${glasses} (${how}).`;
}
