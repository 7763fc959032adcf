import type { Square } from "../numeric/index.ts";
import { OWN_SHARE, STRAIGHT_SHARE, type TasteShape } from "./prior.data.ts";
import type { KnownWhiskey } from "./recipe.ts";

/** A mix with what its distances are made of, reckoned once. */
export interface PlacedMix {
  /** Whiskeys it has, and their shares. */
  readonly used: Int32Array;
  readonly shares: Float64Array;
  /** The quadratic form times the shares. */
  readonly formed: Float64Array;
  readonly square: number;
  readonly withMiddle: number;
}

export interface MixtureKernel {
  /** By shares in the order of the whiskeys. */
  place(shares: readonly number[]): PlacedMix;
  /** Log worth of a mix before any ranking; 0 in the middle of all. */
  mean(a: PlacedMix, shape: TasteShape): number;
  /** Covariance of the log worths of two mixes. */
  covariance(a: PlacedMix, b: PlacedMix, shape: TasteShape): number;
  /** Covariances of one mix with others. */
  withOthers(a: PlacedMix, others: readonly PlacedMix[], shape: TasteShape): Float64Array;
  /** Covariances of some mixes with each other by shape; what no shape changes is reckoned once. */
  covariances(mixes: readonly PlacedMix[]): (shape: TasteShape) => Square;
}

/**
 * How far mixes are from each other, and from that how alike they are liked.
 *
 * Profiles mix by their mean, so that the squared distance of two mixes is a quadratic form of the differences of their shares:
 * attribute by attribute of the values, plus, whiskey by whiskey, what is not known of the profile (its variance) and what no profile
 * holds (`OWN_SHARE`). Scaled so that two whiskeys are 1 apart on average: the unit of the levels does not matter.
 * The covariance is scale² times a straight part and a bent one, exp(−distance² / 2 length²): both positive definite.
 *
 * Sources, from memory: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), ch. 4; means of unknown inputs:
 * Girard et al., NIPS 15 (2003).
 *
 * @param whiskeys one or more
 * @example const { place, covariance } = mixtureKernel([malt, rye]); covariance(place([1, 0]), place([0.5, 0.5]), shape)
 */
export function mixtureKernel(whiskeys: readonly KnownWhiskey[]): MixtureKernel {
  const form = squareForm(whiskeys);
  const q = whiskeys.length;
  const formedBy = (shares: readonly number[]): Float64Array => {
    const formed = new Float64Array(q);
    for (const [i, share] of shares.entries())
      if (share !== 0)
        for (let j = 0; j < q; j += 1)
          formed[j] = (formed[j] as number) + share * (form[i * q + j] as number);
    return formed;
  };
  const times = ({ used, shares }: Pick<PlacedMix, "used" | "shares">, formed: Float64Array): number => {
    let sum = 0;
    // Millions of times, of two or three whiskeys each.
    for (let n = 0; n < used.length; n += 1)
      sum += (shares[n] as number) * (formed[used[n] as number] as number);
    return sum;
  };
  const usedOf = (shares: readonly number[]): Pick<PlacedMix, "used" | "shares"> => {
    const used = Int32Array.from([...shares.keys()].filter((i) => shares[i] !== 0));
    return { used, shares: Float64Array.from(used, (i) => shares[i] as number) };
  };
  const middle = whiskeys.map(() => 1 / q);
  const formedMiddle = formedBy(middle);
  const middleSquare = times(usedOf(middle), formedMiddle);
  // Lone whiskeys are 1 apart on average, so that each is 1/2 from the middle, squared.
  const straightOf = (a: PlacedMix, b: PlacedMix, both: number): number =>
    2 * (both - a.withMiddle - b.withMiddle + middleSquare);
  const apartOf = (a: PlacedMix, b: PlacedMix, both: number): number =>
    Math.max(0, a.square + b.square - 2 * both);
  return {
    place(shares) {
      const own = usedOf(shares);
      const formed = formedBy(shares);
      return { ...own, formed, square: times(own, formed), withMiddle: times(own, formedMiddle) };
    },
    mean(a, { scale, curve }) {
      // Likewise: a lone whiskey is scale · curve below the middle on average.
      return -2 * scale * curve * (a.square - 2 * a.withMiddle + middleSquare);
    },
    covariance(a, b, shape) {
      const both = times(a, b.formed);
      return alike(straightOf(a, b, both), apartOf(a, b, both), lawOf(shape));
    },
    withOthers(a, others, shape) {
      const made = new Float64Array(others.length);
      const law = lawOf(shape);
      for (let n = 0; n < made.length; n += 1) {
        const b = others[n] as PlacedMix;
        const both = times(b, a.formed);
        made[n] = alike(straightOf(a, b, both), apartOf(a, b, both), law);
      }
      return made;
    },
    covariances(mixes) {
      const n = mixes.length;
      const straights = new Float64Array(n * n);
      const aparts = new Float64Array(n * n);
      for (const [i, a] of mixes.entries())
        for (let j = 0; j <= i; j += 1) {
          const b = mixes[j] as PlacedMix;
          const both = times(a, b.formed);
          straights[i * n + j] = straightOf(a, b, both);
          aparts[i * n + j] = apartOf(a, b, both);
        }
      return (shape) => {
        const law = lawOf(shape);
        const square = new Float64Array(n * n);
        for (let i = 0; i < n; i += 1)
          for (let j = 0; j <= i; j += 1) {
            const own = alike(straights[i * n + j] as number, aparts[i * n + j] as number, law);
            square[i * n + j] = own;
            square[j * n + i] = own;
          }
        return square;
      };
    },
  };
}

/** What a shape makes of how two mixes lie. */
interface Law {
  readonly straight: number;
  readonly bent: number;
  readonly rate: number;
}

const lawOf = ({ scale, length }: TasteShape): Law => ({
  straight: scale * scale * STRAIGHT_SHARE,
  bent: scale * scale * (1 - STRAIGHT_SHARE),
  rate: -1 / (2 * length * length),
});

const alike = (straight: number, apart: number, law: Law): number =>
  law.straight * straight + law.bent * Math.exp(law.rate * apart);

function squareForm(whiskeys: readonly KnownWhiskey[]): Float64Array {
  const q = whiskeys.length;
  const attributes = [...new Set(whiskeys.flatMap(({ profile }) => Object.keys(profile)))].toSorted();
  const level = (i: number, attribute: string) => {
    const { profile } = whiskeys[i] as KnownWhiskey;
    return Object.hasOwn(profile, attribute)
      ? (profile[attribute] as { value: number; sd: number })
      : NOTHING;
  };
  const form = new Float64Array(q * q);
  for (const attribute of attributes) {
    const levels = whiskeys.map((_, i) => level(i, attribute));
    const mean = levels.reduce((sum, { value }) => sum + value, 0) / q;
    const off = Float64Array.from(levels, ({ value }) => value - mean);
    for (let i = 0; i < q; i += 1) {
      for (let j = 0; j < q; j += 1)
        form[i * q + j] = (form[i * q + j] as number) + (off[i] as number) * (off[j] as number);
      form[i * (q + 1)] = (form[i * (q + 1)] as number) + (levels[i] as (typeof levels)[number]).sd ** 2;
    }
  }
  let [sum, pairs] = [0, 0];
  for (let i = 0; i < q; i += 1) {
    for (let j = 0; j < i; j += 1) {
      sum += (form[i * q + i] as number) + (form[j * q + j] as number) - 2 * (form[i * q + j] as number);
      pairs += 1;
    }
  }
  const mean = pairs === 0 ? 0 : sum / pairs;
  const known = mean > 1e-12 ? (1 - OWN_SHARE) / mean : 0;
  // Two whiskeys that differ in nothing else are twice this apart, squared.
  const own = (known === 0 ? 1 : OWN_SHARE) / 2;
  return form.map((value, at) => known * value + (at % (q + 1) === 0 ? own : 0));
}

const NOTHING = { value: 0, sd: 0 } as const;
