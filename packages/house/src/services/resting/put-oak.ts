import { pieceGeometry } from "@partsproof/core/oak";
import { contentsOfVessel, volumeOf } from "@partsproof/core/ledger";
import type { BodyRead } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { refuse } from "../refuse.ts";
import type { OakPieceRow } from "../rows.ts";
import { shelfState } from "../shelf/index.ts";
import { areaPerLitreOf, thicknessOf } from "./dose-of-rest.ts";
import { knownRest, momentOf, needOpen } from "./known-rest.ts";
import { restTold, wholeRests } from "./read-rests.ts";

/** What the model of a rest can be asked: cm² a litre of all wood, and face to face in cm. */
const REACH = { areaPerLitre: [1, 4600], thicknessCm: [0.02, 20] } as const;

export const oakInHandlers: Handlers<"putOakIn"> = {
  /** O3: wood goes into the batch's vessel; its dose is by what the vessel holds now. */
  putOakIn: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const rest = await knownRest(records, at);
      needOpen(rest, "putting wood in");
      if (rest.kind !== "oak")
        refuse(409, {
          code: "rest_on_glass",
          path: ["rest"],
          limit: "a rest on oak",
          received: rest.kind,
          message: "putting wood in requires a rest on oak, got one on glass: end it and begin one on oak",
        });
      const [whole] = await wholeRests(records, at.household, { id: rest.id });
      const shelf = await shelfState(records, at.household);
      const vesselId = whole?.batch.vesselId ?? "";
      const volumeMl = volumeOf(contentsOfVessel(shelf.state, vesselId));
      if (!(volumeMl > 0))
        refuse(409, {
          code: "vessel_empty",
          path: ["rest"],
          limit: "a vessel with something in it",
          received: 0,
          message: "putting wood in requires a vessel with something in it, got an empty one",
        });
      const row: OakPieceRow = {
        ...born(house, at.household),
        restId: rest.id,
        ...woodOf(body),
        species: body.species,
        toast: body.toast,
        use: body.use,
        volumeMl,
        inAt: momentOf(body.at, house.clock.now(), rest.beganAt),
        outAt: null,
      };
      needReach(row, [...(whole?.pieces ?? []), row]);
      await records.insert("oakPiece", row);
      return restTold(records, rest);
    }),
};

/** How many there are, their contact and grams; chips are as many as they weigh. */
function woodOf({
  areaCm2,
  piece,
  count = 1,
  grams,
}: BodyRead<"putOakIn">): Pick<OakPieceRow, "piece" | "count" | "areaCm2" | "grams"> {
  const made = piece === undefined ? null : pieceGeometry(piece, count);
  return {
    piece: piece ?? null,
    count,
    // The schema asks for one of the two.
    areaCm2: areaCm2 ?? made?.areaCm2 ?? 0,
    grams: grams ?? (piece?.shape === "chips" ? piece.grams : null),
  };
}

function needReach(row: OakPieceRow, all: readonly OakPieceRow[]): void {
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
  outside("oak_dose_outside", path, REACH.areaPerLitre, "cm² a litre", areaPerLitreOf(all));
  const thickness = thicknessOf(row);
  if (thickness !== null) outside("oak_thickness_outside", path, REACH.thicknessCm, "cm", thickness);
}
