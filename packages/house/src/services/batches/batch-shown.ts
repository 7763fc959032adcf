import { DAY_MS } from "@partsproof/core/quantity";
import type { Batch } from "../../protocol/index.ts";
import {
  batchNow,
  type BatchPast,
  batchPasts,
  NO_PAST,
  type Shelf,
  shelfState,
  shownContents,
} from "../shelf/index.ts";
import { shownReduction } from "./reduction.ts";
import type { House, Records } from "../ports.ts";
import type { BatchRow } from "../rows.ts";

/** Shows batches of one household as of now (R5). */
export async function batchShower(
  records: Records,
  house: Pick<House, "clock">,
  householdId: string,
): Promise<(row: BatchRow) => Batch> {
  const shelf = await shelfState(records, householdId);
  const recipes = new Map((await records.list("recipe", householdId)).map(({ id, name }) => [id, name]));
  const pasts = batchPasts(shelf);
  const now = house.clock.now();
  return (row) => shownBatch(shelf, row, pasts.get(row.id) ?? NO_PAST, recipes.get(row.recipeId) ?? "", now);
}

function shownBatch(
  shelf: Shelf,
  row: BatchRow,
  { poured, made }: BatchPast,
  recipeName: string,
  now: Date,
): Batch {
  const held = batchNow(shelf, row);
  const { id, version, name, recipeId, recipeNumber, vesselId, madeAt, restDays, note } = row;
  return {
    id,
    version,
    name,
    recipeId,
    recipeName,
    recipeNumber,
    vesselId,
    vesselLabel: shelf.vessels.get(vesselId)?.label ?? "",
    madeAt,
    restDays,
    restDueAt: restDue(row)?.toISOString() ?? null,
    state: batchState(row, now),
    note,
    reduction: shownReduction(row, held),
    poured,
    made: shownContents(shelf, made),
    now: shownContents(shelf, held),
  };
}

/** When its rest ends; null where none was asked. */
export function restDue({ madeAt, restDays }: BatchRow): Date | null {
  return restDays === null ? null : new Date(Date.parse(madeAt) + restDays * DAY_MS);
}

export function batchState(row: BatchRow, now: Date): Batch["state"] {
  if (row.finishedAt !== null) return "finished";
  return (restDue(row)?.getTime() ?? -Infinity) > now.getTime() ? "resting" : "rested";
}
