import { batchState, shownReduction } from "../batches/index.ts";
import type { Records } from "../ports.ts";
import { readerOf, wholeRests } from "../resting/index.ts";
import { batchNow, shelfState } from "../shelf/index.ts";
import type { Dated } from "./events.ts";

/** What has a day. A batch that is finished or gone has none any more. */
export async function readDated(records: Records, householdId: string, now: Date): Promise<Dated> {
  const shelf = await shelfState(records, householdId);
  const batches = [...shelf.batches.values()].filter(
    (batch) => batchState(batch, now) !== "finished" && batchNow(shelf, batch).size > 0,
  );
  const there = new Set(batches.map(({ id }) => id));
  return {
    batches,
    steps: batches.flatMap((batch) => {
      const left = shownReduction(batch, batchNow(shelf, batch))?.left ?? [];
      return left.length === 0 ? [] : [{ batch, dueAt: left.map(({ dueAt }) => dueAt) }];
    }),
    rests: (await wholeRests(records, householdId)).filter(({ batch }) => there.has(batch.id)),
    read: await readerOf(records, householdId),
  };
}
