import {
  areaAsInCask,
  caskAreaPerLitre,
  OAK_CAUTIONS,
  OAK_NOT_KNOWN,
  oakDose,
  pieceGeometry,
  soakedUp,
} from "@partsproof/core/oak";
import type { BodyRead, OakResult } from "../../protocol/index.ts";

/** How much wood there is to a litre; from its area, or from the pieces it is made of. */
export function doseOf({
  areaCm2: measured,
  piece,
  count = 1,
  grams: weighed,
  volumeMl,
}: BodyRead<"oakDose">): OakResult {
  const made = piece === undefined ? null : pieceGeometry(piece, count);
  // The schema asks for one of the two.
  const areaCm2 = measured ?? made?.areaCm2 ?? 0;
  const litres = volumeMl / 1000;
  const grams =
    weighed !== undefined
      ? { low: weighed, likely: weighed, high: weighed, weighed: true }
      : made === null
        ? null
        : { ...made.grams, weighed: piece?.shape === "chips" };
  const soaked = grams === null ? null : soakedUp(grams);
  const asInCaskCm2 = areaAsInCask(litres);
  return {
    areaCm2,
    volumeMl,
    ...oakDose({ areaCm2, grams: grams?.likely ?? null, litres }),
    grams,
    asInCaskCm2,
    piecesAsInCask: made === null ? null : (asInCaskCm2.likely / made.areaCm2) * made.count,
    smallCaskAreaPerLitre: caskAreaPerLitre(litres).areaPerLitre,
    thicknessCm: made?.thicknessCm ?? null,
    soaksUpMl: soaked?.ml ?? null,
    soaksUpFirstDaysMl: soaked?.firstDaysMl ?? null,
    extractAtMostG: soaked?.extractAtMostG ?? null,
    cautions: [...OAK_CAUTIONS],
    notKnown: OAK_NOT_KNOWN,
  };
}
