import { DAY_MS } from "@partsproof/core/quantity";
import { OAK_CAUTIONS } from "@partsproof/core/oak";
import type { NoteReader } from "@partsproof/core/notes";
import type { Check, Rest } from "../../protocol/index.ts";
import { restDue } from "../batches/index.ts";
import type { BatchRow, CheckTastingRow, OakPieceRow, RestRow } from "../rows.ts";
import { type Shelf, volumeIn } from "../shelf/index.ts";
import { checkLevels } from "./check-levels.ts";
import { doseOfRest, thicknessOf, woodIn } from "./dose-of-rest.ts";

/** A rest with all that belongs to it, as read in one transaction. */
export interface WholeRest {
  readonly rest: RestRow;
  readonly batch: BatchRow;
  /** In the order in which they went in. */
  readonly pieces: readonly OakPieceRow[];
  /** In the order of their days. */
  readonly checks: readonly CheckTastingRow[];
}

/** When the days of a rest begin: with the first wood, on glass with the rest. */
export const startOf = ({ rest, pieces }: Pick<WholeRest, "rest" | "pieces">): string =>
  pieces[0]?.inAt ?? rest.beganAt;

/** Days since then; a tasting of before counts as day 0. */
export const dayOf = (start: string, at: string): number =>
  Math.max(0, (Date.parse(at) - Date.parse(start)) / DAY_MS);

export function shownRest(
  shelf: Shelf,
  whole: WholeRest,
  read: NoteReader,
  tasters: ReadonlyMap<string, string>,
): Rest {
  const { rest, batch, pieces } = whole;
  const { id, version, batchId, beganAt, pull, leadsAt, falling, celsius, flightOn, note } = rest;
  return {
    id,
    version,
    batchId,
    batchName: batch.name,
    vesselId: batch.vesselId,
    kind: rest.kind as Rest["kind"],
    beganAt,
    oakInAt: pieces[0]?.inAt ?? null,
    pull,
    leadsAt,
    falling: [...falling],
    celsius,
    flightOn,
    note,
    minimumDays: batch.restDays,
    minimumEndsAt: restDue(batch)?.toISOString() ?? null,
    sample: sampleOf(shelf, rest),
    oak: pieces.map((piece) => shownPiece(piece)),
    dose: doseOfRest(woodIn(rest, pieces)),
    abv20: rest.abv20,
    checks: checksOf(whole, read, tasters),
    endedAt: rest.endedAt,
    lossMl: rest.lossMl,
    cautions: [...OAK_CAUTIONS],
  };
}

function sampleOf(shelf: Shelf, { sampleVesselId: id }: RestRow): Rest["sample"] {
  const ml = id === null ? 0 : volumeIn(shelf, id);
  return id !== null && ml > 0 ? { vesselId: id, label: shelf.vessels.get(id)?.label ?? "", ml } : null;
}

function shownPiece(row: OakPieceRow): Rest["oak"][number] {
  const { id, version, piece, count, areaCm2, grams, species, toast, use, volumeMl, inAt, outAt } = row;
  return {
    id,
    version,
    piece,
    count,
    areaCm2,
    grams,
    thicknessCm: thicknessOf(row),
    species: species as Rest["oak"][number]["species"],
    toast,
    use,
    volumeMl,
    inAt,
    outAt,
  };
}

function checksOf(whole: WholeRest, read: NoteReader, tasters: ReadonlyMap<string, string>): Check[] {
  const start = startOf(whole);
  return whole.checks.map(({ id, version, at, tasterId, notes, strengths }) => ({
    id,
    version,
    at,
    day: dayOf(start, at),
    tasterId,
    taster: tasterId === null ? null : (tasters.get(tasterId) ?? null),
    notes,
    strengths: [...strengths],
    levels: { ...checkLevels({ notes, strengths }, read) },
  }));
}
