import { pieceGeometry } from "@partsproof/core/oak";
import type { OakResult } from "../../protocol/index.ts";
import { doseOf } from "../oak/index.ts";
import type { OakPieceRow, RestRow } from "../rows.ts";

const LITRE_ML = 1000;

/** Face to face of one piece; null where only an area was said. */
export const thicknessOf = ({ piece, count }: Pick<OakPieceRow, "piece" | "count">): number | null =>
  piece === null ? null : (pieceGeometry(piece, count).thicknessCm ?? null);

/** The piece with most contact: the others follow it in how deep the spirit has to go. */
const mostContact = (pieces: readonly OakPieceRow[]): OakPieceRow | null =>
  pieces.reduce<OakPieceRow | null>(
    (most, one) => (most === null || one.areaCm2 > most.areaCm2 ? one : most),
    null,
  );

/** cm² a litre: each piece in what the vessel held when it went in. */
export const areaPerLitreOf = (pieces: readonly OakPieceRow[]): number =>
  pieces.reduce((sum, { areaCm2, volumeMl }) => sum + areaCm2 / (volumeMl / LITRE_ML), 0);

/** How many there are that the model tells apart: by their days, thickness and use. */
export const kindsOf = (pieces: readonly OakPieceRow[]): number =>
  new Set(pieces.map((one) => [one.inAt, one.outAt, thicknessOf(one), one.use].join(" "))).size;

/** The wood that is in, or was until the rest ended. */
export const woodIn = (
  { endedAt }: Pick<RestRow, "endedAt">,
  pieces: readonly OakPieceRow[],
): readonly OakPieceRow[] => pieces.filter(({ outAt }) => outAt === null || outAt === endedAt);

/** These together, in what the vessel held when the first of them went in; null where there are none. */
export function doseOfRest(pieces: readonly OakPieceRow[]): OakResult | null {
  const [first] = pieces;
  if (first === undefined) return null;
  const { volumeMl } = first;
  const areaCm2 = areaPerLitreOf(pieces) * (volumeMl / LITRE_ML);
  const weighed = pieces.every(({ grams }) => grams !== null)
    ? pieces.reduce((sum, { grams }) => sum + (grams ?? 0), 0)
    : null;
  const one = pieces.length === 1 ? first : null;
  // One kind of wood is reckoned from its shape; several by the area they come to.
  const dose =
    one !== null && one.piece !== null
      ? doseOf({
          piece: one.piece,
          ...(one.piece.shape === "chips" ? {} : { count: one.count }),
          ...(one.piece.shape === "chips" || one.grams === null ? {} : { grams: one.grams }),
          volumeMl,
        })
      : doseOf({ areaCm2, ...(weighed === null ? {} : { grams: weighed }), volumeMl });
  return { ...dose, thicknessCm: dose.thicknessCm ?? thicknessOf(mostContact(pieces) ?? first) };
}
