import type { MixingBoard } from "../../protocol/index.ts";
import type { House, Reads } from "../ports.ts";
import { observed, revealedSayings, type Saying } from "../profiles/index.ts";
import type { Shelf } from "../shelf/index.ts";
import { mixingBoard } from "./mixing-board.ts";
import { notedMixes } from "./noted-mixes.ts";

/** All that laws of mixing are learned from, read at once. */
export interface MixingRead {
  readonly sayings: readonly Saying[];
  readonly onWood: ReadonlySet<string>;
}

/** MI1, MI2: sheets of revealed flights, and which batches lay on wood. */
export async function readMixing(house: House, records: Reads, household: string): Promise<MixingRead> {
  const sayings = await revealedSayings(house, records, household);
  const pieces = new Set((await records.list("oakPiece", household)).map(({ restId }) => restId));
  const rests = await records.list("rest", household);
  return {
    sayings,
    onWood: new Set(rests.filter(({ id }) => pieces.has(id)).map(({ batchId }) => batchId)),
  };
}

/** What a household's own mixes tell of mixing. */
export const learnedMixing = (
  house: House,
  shelf: Shelf,
  { sayings, onWood }: MixingRead,
): Promise<MixingBoard> => mixingBoard(house, notedMixes(shelf, observed(house, sayings), onWood));
