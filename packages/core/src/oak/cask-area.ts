import { CASK } from "./oak.data.ts";

const CUBIC_CM = 1000;

function needLitres(litres: number): void {
  if (!(litres > 0 && litres < Infinity))
    throw new RangeError(`a volume requires more than 0 L, got ${litres} L`);
}

/** Wood a litre of liquid touches in a cask of a size. */
export interface CaskArea {
  /** cm² a litre: 92 at 200 L, carried by the cube root of the volume. */
  readonly areaPerLitre: number;
  readonly low: number;
  readonly high: number;
  /** The least any body of that volume can have, and the least a closed cylinder can. */
  readonly sphere: number;
  readonly cylinder: number;
}

/**
 * How much wood a litre touches in a cask of a size, cm² a litre.
 *
 * A rule, not a measurement: casks of all sizes are taken to have the shape of a 200 L one, so area a litre goes by the inverse cube
 * root of the volume. Domain: volumes above 0 L. Accuracy: ± 5 in 92, carried along; the bodies are exact. Source: geometry; 92 ± 5
 * see `oak.data.ts`. Cost: under a microsecond.
 *
 * @throws RangeError unless litres > 0
 * @example Math.round(caskAreaPerLitre(0.75).areaPerLitre) // 592
 */
export function caskAreaPerLitre(litres: number): CaskArea {
  needLitres(litres);
  const grown = Math.cbrt(CASK.litres / litres);
  const cm3 = litres * CUBIC_CM;
  return {
    areaPerLitre: CASK.likely * grown,
    low: CASK.low * grown,
    high: CASK.high * grown,
    sphere: Math.cbrt(36 * Math.PI * cm3 ** 2) / litres,
    cylinder: (3 * Math.cbrt(2 * Math.PI * cm3 ** 2)) / litres,
  };
}

/**
 * The wood that gives a vessel as much contact a litre as a 200 L cask has, cm².
 *
 * Domain: volumes above 0 L. Accuracy: ± 5 in 92. Source: `oak.data.ts`. Cost: under a microsecond.
 *
 * @throws RangeError unless litres > 0
 * @example areaAsInCask(0.75).likely // 69
 */
export function areaAsInCask(litres: number): {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
} {
  needLitres(litres);
  return { low: CASK.low * litres, likely: CASK.likely * litres, high: CASK.high * litres };
}
