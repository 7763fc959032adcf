import { type HeldLevel, heldLevel, type LearnedLevels, learnLevels } from "@partsproof/core/palate";
import { readMixing } from "../mixing/index.ts";
import type { House, Reads } from "../ports.ts";
import { LEVEL, type Saying } from "../profiles/index.ts";
import { Remembered } from "../remembered.ts";
import type { WhiskeyRow } from "../rows.ts";
import type { Shelf } from "../shelf/index.ts";
import { tableNotes, type TableNotes } from "./table-notes.ts";

/** Learning takes long: kept by a digest of all that it rests on, so that it can never be out of date. */
const kept = new WeakMap<House, Remembered<LearnedLevels>>();

/** All that levels are learned from, read at once. */
export interface PalateRead {
  readonly sayings: readonly Saying[];
  readonly onWood: ReadonlySet<string>;
}

/** PA1: sheets of revealed flights, and which batches lay on wood. */
export const readPalate = (house: House, records: Reads, household: string): Promise<PalateRead> =>
  readMixing(house, records, household);

export interface LearnedHere extends TableNotes {
  readonly levels: LearnedLevels;
}

/** What a household's labels, shelf and sheets tell of its whiskeys. */
export function learnedHere(house: House, shelf: Shelf, { sayings, onWood }: PalateRead): LearnedHere {
  const told = tableNotes(shelf, sayings, onWood);
  const notes = [...told.shelf, ...told.sheets];
  const digest = house.sha256(new TextEncoder().encode(JSON.stringify([told.whiskeys, notes]))).join();
  const all = kept.get(house) ?? new Remembered<LearnedLevels>();
  kept.set(house, all);
  const levels = all.get(digest) ?? learnLevels(told.whiskeys, notes);
  all.set(digest, levels);
  return { ...told, levels };
}

/** PA4: learned levels of one whiskey, of what was spoken of; held within the scale. */
export function levelsOf(
  { whiskeys, attributes }: LearnedLevels,
  id: string,
): Readonly<Record<string, HeldLevel>> {
  const i = whiskeys.indexOf(id);
  if (i < 0) return {};
  return Object.fromEntries(
    attributes.flatMap(({ id: attribute, means, covariance, alone, inMixes }) => {
      if ((alone[i] ?? 0) + (inMixes[i] ?? 0) === 0) return [];
      const sd = Math.sqrt(covariance[i * whiskeys.length + i] as number);
      return [[attribute, heldLevel({ mean: means[i] as number, sd }, LEVEL)]];
    }),
  );
}

/** PA6: the shelf with each whiskey as it was learned; one of which nothing was said stays as it is. */
export function learnedShelf(shelf: Shelf, { levels }: LearnedHere): Shelf {
  const whiskeys = [...shelf.whiskeys].map(([id, row]): readonly [string, WhiskeyRow] => {
    const known = Object.entries(levelsOf(levels, id));
    const intensities = Object.fromEntries(
      known.map(([attribute, { mean, sd }]) => [attribute, { value: mean, sd }]),
    );
    return known.length === 0
      ? [id, row]
      : [id, { ...row, profile: { tastedAt: row.profile?.tastedAt ?? null, intensities } }];
  });
  return { ...shelf, whiskeys: new Map(whiskeys) };
}
