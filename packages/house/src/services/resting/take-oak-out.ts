import { pieceGeometry } from "@partsproof/core/oak";
import type { BodyRead } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import type { Records } from "../ports.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { OakPieceRow } from "../rows.ts";
import { knownRest, momentOf, needOpen } from "./known-rest.ts";
import { loseWithWood } from "./lose-with-wood.ts";
import { needFewKinds, needReach } from "./need-reach.ts";
import { restTold, wholeRests } from "./read-rests.ts";

type Body = BodyRead<"takeOakOut">;

export const oakOutHandlers: Handlers<"takeOakOut"> = {
  /** O7: one piece, or some of several like it; the others stay in and the rest goes on. */
  takeOakOut: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const rest = await knownRest(records, at);
      const id = at["piece"] ?? "";
      const [whole] = await wholeRests(records, at.household, { id: rest.id });
      const pieces = whole?.pieces ?? [];
      const old = pieces.find((one) => one.id === id) ?? unknownId("piece", id, ["piece"]);
      needOpen(rest, "taking a piece out");
      const head = edited(house, "piece", old, body.version);
      const others = pieces.filter((one) => one !== old);
      if (body.at === null) {
        needWhere(old, "out");
        const back = { ...head, outAt: null };
        needReach(back, [...others, back]);
        await kept(records, back, body.version);
        return restTold(records, rest);
      }
      needWhere(old, "in");
      const outAt = momentOf(body.at, house.clock.now(), old.inAt);
      const out = someOf(old, countOf(old, body));
      if (out.count === old.count) {
        const row = { ...head, outAt };
        needFewKinds([...others, row]);
        await kept(records, row, body.version);
      } else {
        const stays = { ...head, ...someOf(old, old.count - out.count) };
        const row = { ...old, ...out, ...born(house, at.household), outAt };
        needFewKinds([...others, stays, row]);
        await kept(records, stays, body.version);
        await records.insert("oakPiece", row);
      }
      if (whole !== undefined && body.lossMl > 0) {
        const note = `lost with wood taken out of ${whole.batch.name}`;
        await loseWithWood(records, house, whole.batch, { ml: body.lossMl, note });
      }
      return restTold(records, rest);
    }),
};

async function kept(records: Records, row: OakPieceRow, sent: number): Promise<void> {
  if (!(await records.replace("oakPiece", row))) staleEdit("piece", sent, row.version);
}

function needWhere({ outAt }: OakPieceRow, where: "in" | "out"): void {
  if ((outAt === null) === (where === "in")) return;
  refuse(409, {
    code: where === "in" ? "piece_is_out" : "piece_is_in",
    path: ["piece"],
    limit: `a piece that is ${where}`,
    received: outAt ?? "in",
    message:
      where === "in"
        ? `taking a piece out requires one that is in, got one that came out ${outAt}`
        : "saying that a piece is in still requires one that came out, got one that is in",
  });
}

function countOf({ count: there }: OakPieceRow, { count = there }: Body): number {
  if (count <= there) return count;
  refuse(422, {
    code: "count_too_large",
    path: ["count"],
    limit: `1 to ${there}`,
    received: count,
    message: `pieces to take out requires at most the ${there} that are in, got ${count}`,
  });
}

/** So many of several like one another, with their part of the contact and the grams. */
function someOf(row: OakPieceRow, count: number): Pick<OakPieceRow, "count" | "areaCm2" | "grams"> {
  if (count === row.count) return row;
  const part = count / row.count;
  return {
    count,
    areaCm2: row.piece === null ? row.areaCm2 * part : pieceGeometry(row.piece, count).areaCm2,
    grams: row.grams === null ? null : row.grams * part,
  };
}
