import { CASK } from "./oak.data.ts";

/** How much wood there is to a litre. */
export interface Dose {
  /** cm² a litre. */
  readonly areaPerLitre: number;
  /** Against a 200 L cask of 92 cm²/L, and what ± 5 leaves open. */
  readonly caskRatio: number;
  readonly caskRatioLow: number;
  readonly caskRatioHigh: number;
  /** Null where the wood was not weighed. */
  readonly gramsPerLitre: number | null;
}

/**
 * Wood a litre: contact area against a cask's, and grams.
 *
 * Domain: area and litres above 0, grams 0 or more. Accuracy: exact for the numbers given; the ratio's range is that of the cask
 * alone. Source: geometry; the cask see `oak.data.ts`. Cost: under a microsecond.
 *
 * @throws RangeError outside the domain
 * @example oakDose({ areaCm2: 66, grams: 10.9, litres: 0.75 }).areaPerLitre // 88
 */
export function oakDose(wood: {
  readonly areaCm2: number;
  readonly grams: number | null;
  readonly litres: number;
}): Dose {
  const { areaCm2, grams, litres } = wood;
  if (!(areaCm2 > 0 && areaCm2 < Infinity))
    throw new RangeError(`area of oak requires more than 0 cm², got ${areaCm2} cm²`);
  if (!(litres > 0 && litres < Infinity))
    throw new RangeError(`a volume requires more than 0 L, got ${litres} L`);
  if (grams !== null && !(grams >= 0 && grams < Infinity))
    throw new RangeError(`grams of oak requires 0 g or more, got ${grams} g`);
  const areaPerLitre = areaCm2 / litres;
  return {
    areaPerLitre,
    caskRatio: areaPerLitre / CASK.likely,
    caskRatioLow: areaPerLitre / CASK.high,
    caskRatioHigh: areaPerLitre / CASK.low,
    gramsPerLitre: grams === null ? null : grams / litres,
  };
}
