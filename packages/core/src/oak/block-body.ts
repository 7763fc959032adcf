import type { Body } from "./piece.ts";

/** A plain block of three lengths in cm, wetted on all six sides. */
export function blockBody([a, b, c]: readonly [number, number, number]): Body {
  for (const length of [a, b, c]) {
    if (!(length > 0 && length < Infinity))
      throw new RangeError(`a block requires lengths of more than 0 cm, got ${length} cm`);
  }
  return {
    areaCm2: 2 * (a * b + b * c + c * a),
    volumeCm3: a * b * c,
    thicknessCm: Math.min(a, b, c),
  };
}
