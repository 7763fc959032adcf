import { MOST_PIECES } from "@partsproof/core/rest";
import { refuse } from "../refuse.ts";
import type { OakPieceRow } from "../rows.ts";
import { areaPerLitreOf, kindsOf, thicknessOf } from "./dose-of-rest.ts";

/** What the model of a rest can be asked: cm² a litre of all wood that is in together, and face to face in cm. */
const REACH = { areaPerLitre: [1, 4600], thicknessCm: [0.02, 20] } as const;

/** O3, O7: wood that the model of a rest can be asked of, this piece among all others. */
export function needReach(row: OakPieceRow, all: readonly OakPieceRow[]): void {
  const outside = (
    code: string,
    path: string,
    [least, most]: readonly [number, number],
    unit: string,
    got: number,
  ) => {
    if (got >= least && got <= most) return;
    const limit = `${least} to ${most} ${unit}`;
    const message = `wood in a vessel requires ${limit}, got ${got.toPrecision(3)} ${unit}`;
    refuse(422, { code, path: [path], limit, received: got, message });
  };
  const path = row.piece === null ? "areaCm2" : "piece";
  outside(
    "oak_dose_outside",
    path,
    REACH.areaPerLitre,
    "cm² a litre",
    areaPerLitreOf(all.filter((one) => together(one, row))),
  );
  const thickness = thicknessOf(row);
  if (thickness !== null) outside("oak_thickness_outside", path, REACH.thicknessCm, "cm", thickness);
  needFewKinds(all);
}

const together = (a: OakPieceRow, b: OakPieceRow): boolean =>
  (a.outAt === null || a.outAt > b.inAt) && (b.outAt === null || b.outAt > a.inAt);

/** O7: each kind with days of its own takes the model its time. */
export function needFewKinds(all: readonly OakPieceRow[]): void {
  const kinds = kindsOf(all);
  if (kinds <= MOST_PIECES) return;
  refuse(409, {
    code: "too_many_pieces",
    path: ["rest"],
    limit: `at most ${MOST_PIECES}`,
    received: kinds,
    message: `a rest requires at most ${MOST_PIECES} pieces with days of their own, got ${kinds}`,
  });
}
