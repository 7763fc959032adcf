import { blockBody } from "./block-body.ts";
import { OAK_DENSITY } from "./oak.data.ts";
import type { Body, Piece } from "./piece.ts";
import { spiralBody } from "./spiral-body.ts";

/** What so many pieces have together. */
export interface PieceGeometry {
  readonly areaCm2: number;
  readonly volumeCm3: number;
  /** Of one piece, face to face. */
  readonly thicknessCm: number;
  readonly grams: { readonly low: number; readonly likely: number; readonly high: number };
  /** How many there are; of chips as many as weigh that, with the range the density leaves. */
  readonly count: number;
}

/**
 * Contact area, volume and mass of pieces of oak. All sides are taken to be wetted.
 *
 * Domain: lengths above 0 cm. Accuracy: areas and volumes are exact for the body that was measured; sawn wood has more surface
 * than its lengths say, by an amount nobody states. Grams are by the density of oak, 0.60 to 0.77 g/cm³ (from memory), unless
 * the chips were weighed. Source: geometry. Cost: under a microsecond.
 *
 * @throws RangeError for lengths that are no body, or a count that is not a whole number from 1
 * @example pieceGeometry({ shape: "stick", cm: [1, 1, 16] }).areaCm2 // 66
 */
export function pieceGeometry(piece: Piece, count = 1): PieceGeometry {
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError(`a count of pieces requires a whole number from 1, got ${count}`);
  if (piece.shape === "chips") return chips(blockBody(piece.cm), piece.grams);
  const one = piece.shape === "spiral" ? spiralBody(piece) : blockBody(piece.cm);
  const volumeCm3 = one.volumeCm3 * count;
  return {
    areaCm2: one.areaCm2 * count,
    volumeCm3,
    thicknessCm: one.thicknessCm,
    grams: {
      low: volumeCm3 * OAK_DENSITY.low,
      likely: volumeCm3 * OAK_DENSITY.likely,
      high: volumeCm3 * OAK_DENSITY.high,
    },
    count,
  };
}

/** By weight: as many chips as their density makes of it. */
function chips(one: Body, grams: number): PieceGeometry {
  if (!(grams > 0 && grams < Infinity))
    throw new RangeError(`grams of chips requires more than 0 g, got ${grams} g`);
  const volumeCm3 = grams / OAK_DENSITY.likely;
  const count = volumeCm3 / one.volumeCm3;
  return {
    areaCm2: one.areaCm2 * count,
    volumeCm3,
    thicknessCm: one.thicknessCm,
    grams: { low: grams, likely: grams, high: grams },
    count,
  };
}
