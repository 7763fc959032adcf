import { integrate, rootByBrent } from "../numeric/index.ts";
import { normalCumulative as phi, normalDensity, quotient } from "../statistics/index.ts";
import { CHANCE_RIGHT, type DifferenceTest } from "./difference-tests.data.ts";

/** Above this d′ the wrong answers of every test are rarer than the digits of a double. */
export const MOST_D_PRIME = 20;
/** The normal density beyond this is below 1e-16. */
const FAR = 8.5;

/** An integral over a normal density around `centre`. */
const over = (f: (z: number) => number, centre = 0): number =>
  integrate((z) => normalDensity(z - centre) * f(z), centre - FAR, centre + FAR, 8);

/** Sorted, the two glasses of one kind are the lowest two (or, turned round, the highest) and the split falls beside them. */
const twoOfFive = (d: number): number =>
  integrate(
    (fourth) => {
      // The gap between third and fourth is smaller than that between second and third: second < 2·third − fourth.
      const rest = (third: number): number => {
        const second = 2 * third - fourth;
        return normalDensity(third) * (phi(second + d) ** 2 + phi(second - d) ** 2);
      };
      return 6 * normalDensity(fourth) * phi(-fourth) * integrate(rest, -FAR, fourth, 4);
    },
    -FAR,
    FAR,
    5,
  );

const wrong: Readonly<Record<DifferenceTest, (d: number) => number>> = {
  two_afc: (d) => phi(-d / Math.SQRT2),
  duo_trio: (d) => {
    const [a, b] = [phi(-d / Math.SQRT2), phi(-d / Math.sqrt(6))];
    return a + b - 2 * a * b;
  },
  // 1 − Φ² = (1 − Φ)(1 + Φ), so that a small remainder keeps its digits.
  three_afc: (d) => over((z) => phi(-z) * (1 + phi(z)), d),
  triangle: (d) =>
    2 *
    integrate(
      (z) => {
        const [far, apart] = [z * Math.sqrt(3), d * Math.sqrt(2 / 3)];
        return normalDensity(z) * (phi(far - apart) - phi(-far - apart));
      },
      0,
      FAR,
      8,
    ),
  tetrad: (d) => 2 * over((z) => phi(z - d) * (2 * phi(z) - phi(z - d))),
  two_out_of_five: (d) => 1 - twoOfFive(d),
};

/**
 * The probability of a right answer in a difference test, by the distance d′ of the two whiskeys.
 *
 * Thurstone's model, unit-variance: one impression a glass, normal, standard deviation 1, means d′ apart. Triangle, duo-trio and
 * tetrad are answered by comparing distances, 2-AFC and 3-AFC by picking the strongest; five glasses are split at the wider of
 * the two gaps beside the middle one (this project's rule: no published function for two-out-of-five was read; whoever splits them
 * by least squares is right up to 0.02 more often).
 *
 * Accuracy: absolute 1e-12 (found 1e-15; reference test, mpmath at 30 digits). Domain: 0 <= d′ <= 20.
 * Sources, from memory: Ennis, J. Sensory Studies 8 (1993) 353; Hacker and Ratcliff, Perception & Psychophysics 26 (1979) 168;
 * Ennis, Ennis, Palen and O'Mahony, J. Sensory Studies 13 (1998) 291 (tetrad).
 *
 * @throws RangeError outside the domain
 * @example probabilityRight("two_afc", 1) // 0.7602499389065233
 */
export function probabilityRight(test: DifferenceTest, dPrime: number): number {
  if (!(dPrime >= 0 && dPrime <= MOST_D_PRIME)) {
    throw new RangeError(`probabilityRight requires d′ from 0 to ${MOST_D_PRIME}, got ${dPrime}`);
  }
  if (dPrime === 0) return chanceRight(test);
  return Math.min(1, 1 - wrong[test](dPrime));
}

/** The chance of a right answer by luck, as a double. */
export const chanceRight = (test: DifferenceTest): number =>
  quotient(CHANCE_RIGHT[test].numerator, CHANCE_RIGHT[test].denominator);

/**
 * The d′ at which a difference test is answered right with a given probability: 0 at or below chance, Infinity at 1.
 *
 * Accuracy: the d′ whose probability is right to 1e-14; for triangle, tetrad and two-out-of-five, whose curves are flat at 0, d′
 * near 0 is good to 1e-7 only.
 *
 * @throws RangeError unless the probability is from 0 to 1
 * @example dPrimeAt("two_afc", 0.7602499389065233) // 1
 */
export function dPrimeAt(test: DifferenceTest, probability: number): number {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`dPrimeAt requires a probability from 0 to 1, got ${probability}`);
  }
  if (probability <= chanceRight(test)) return 0;
  if (probability === 1) return Infinity;
  // Where nearly all are right it is the share of wrong answers that carries the digits.
  const miss = 1 - probability;
  const off = (d: number): number => (d === 0 ? 1 - chanceRight(test) : wrong[test](d)) - miss;
  return off(MOST_D_PRIME) >= 0 ? MOST_D_PRIME : rootByBrent(off, 0, MOST_D_PRIME, 1e-13);
}
