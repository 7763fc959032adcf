import { type CountLaw, displacementLaw } from "../statistics/index.ts";
import { plainOdds } from "./plain-chance.ts";
import { MAX_GLASSES } from "./williams-square.ts";

/** A fair shuffle that leaves all glasses in or next to their place at least this often is told to expose little. */
const EXPOSES_LITTLE = 0.01;

export interface ShuffleSeen {
  /** The law of the glasses a fair shuffle leaves in their place, and in it or next to it. */
  readonly inPlace: CountLaw;
  readonly nearPlace: CountLaw;
  /** Chance of as many or more. */
  readonly pInPlace: number;
  readonly pNearPlace: number;
  readonly said: readonly string[];
}

const often = (p: number): string => (p === 1 ? "always" : plainOdds(p));
const counted = (n: number): string => (n === 1 ? "1 glass" : `${n} glasses`);
const stand = (n: number): string => (n === 1 ? "stands" : "stand");

/**
 * What the undersides say about a shuffle of glasses in a row: how many ended in their place or next to it, and how often a
 * fair shuffle leaves as many. Exact. Several fair shuffles one after another obey the same law as one.
 *
 * It says how often, never whether: any outcome can come of a fair shuffle and of a sham, so none is called real or fake.
 *
 * @param ended where the glass that stood first, second, … ended, counted from 0: every place once
 * @throws RangeError unless these are 2 to 12 different places 0 … n − 1
 * @example shuffleWords([1, 0, 2]).pInPlace // 0.666…: 4 of 6 shuffles leave a glass or more in its place
 */
export function shuffleWords(ended: readonly number[]): ShuffleSeen {
  const n = ended.length;
  const whole = ended.toSorted((a, b) => a - b).every((place, i) => place === i);
  if (n < 2 || n > MAX_GLASSES || !whole) {
    throw new RangeError(
      `shuffleWords requires places 0 to n - 1 of 2 to ${MAX_GLASSES} glasses, got [${ended.join()}]`,
    );
  }
  const [inPlace, nearPlace] = [displacementLaw(n, 0), displacementLaw(n, 1)];
  const stayed = ended.filter((place, i) => place === i).length;
  const near = ended.filter((place, i) => Math.abs(place - i) <= 1).length;
  const [pInPlace, pNearPlace] = [inPlace.pAtLeast(stayed), nearPlace.pAtLeast(near)];
  const little = nearPlace.pAtLeast(n) >= EXPOSES_LITTLE;
  return {
    inPlace,
    nearPlace,
    pInPlace,
    pNearPlace,
    said: [
      `${counted(stayed)} of ${n} ${stand(stayed)} where ${stayed === 1 ? "it" : "they"} stood before. How often a fair shuffle leaves as many or more: ${often(pInPlace)}.`,
      `${counted(near)} of ${n} ${stand(near)} there or next to it. How often a fair shuffle leaves as many or more: ${often(pNearPlace)}.`,
      little
        ? `With ${n} glasses this exposes little: of fair shuffles ${often(nearPlace.pAtLeast(n))} leaves all of them there or next to it.`
        : `Of fair shuffles ${often(nearPlace.pAtLeast(n))} leaves all ${n} there or next to it; anything less says little.`,
    ],
  };
}
