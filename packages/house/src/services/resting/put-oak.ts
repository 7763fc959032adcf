import { pieceGeometry } from "@partsproof/core/oak";
import { contentsOfVessel, volumeOf } from "@partsproof/core/ledger";
import type { BodyRead } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { refuse } from "../refuse.ts";
import type { OakPieceRow } from "../rows.ts";
import { shelfState } from "../shelf/index.ts";
import { knownRest, momentOf, needOpen } from "./known-rest.ts";
import { needReach } from "./need-reach.ts";
import { restTold, wholeRests } from "./read-rests.ts";

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
