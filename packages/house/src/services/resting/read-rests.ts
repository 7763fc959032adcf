import type { NoteReader } from "@partsproof/core/notes";
import type { Rest } from "../../protocol/index.ts";
import { readerFor } from "../notes/index.ts";
import type { Records } from "../ports.ts";
import type { RestRow } from "../rows.ts";
import { type Shelf, shelfState } from "../shelf/index.ts";
import { wordsOf } from "../words/index.ts";
import { shownRest, type WholeRest } from "./shown-rest.ts";

/** The rests of a household, or some of them, with all that belongs to each; oldest first. */
export async function wholeRests(
  records: Records,
  householdId: string,
  where: { readonly batchId?: string; readonly id?: string } = {},
): Promise<readonly WholeRest[]> {
  const rests = await records.list("rest", householdId, { where });
  if (rests.length === 0) return [];
  const batches = await records.list("batch", householdId, {
    ids: [...new Set(rests.map(({ batchId }) => batchId))],
  });
  const pieces = await records.list("oakPiece", householdId);
  const checks = await records.list("checkTasting", householdId);
  return rests.flatMap((rest) => {
    const batch = batches.find(({ id }) => id === rest.batchId);
    if (batch === undefined) return [];
    const own = <R extends { readonly restId: string }>(rows: readonly R[]): R[] =>
      rows.filter(({ restId }) => restId === rest.id);
    return [
      {
        rest,
        batch,
        pieces: own(pieces).toSorted((a, b) => inOrder(a.inAt, b.inAt)),
        checks: own(checks).toSorted((a, b) => inOrder(a.at, b.at)),
      },
    ];
  });
}

const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The reader that everything of the household is read by (V4). */
export const readerOf = async (records: Records, householdId: string): Promise<NoteReader> =>
  readerFor(await wordsOf(records, householdId));

/** Rests as told, newest first. */
export async function restsOf(
  records: Records,
  householdId: string,
  wholes: readonly WholeRest[],
  shelf?: Shelf,
): Promise<Rest[]> {
  if (wholes.length === 0) return [];
  const on = shelf ?? (await shelfState(records, householdId));
  const read = await readerOf(records, householdId);
  const tasters = new Map((await records.list("taster", householdId)).map(({ id, name }) => [id, name]));
  return wholes.map((whole) => shownRest(on, whole, read, tasters)).toReversed();
}

/** One rest as told, after it was written. */
export async function restTold(records: Records, { householdId, id }: RestRow): Promise<Rest> {
  const [told] = await restsOf(records, householdId, await wholeRests(records, householdId, { id }));
  if (told === undefined) throw new Error(`rest ${id} requires to be there, got none`);
  return told;
}
