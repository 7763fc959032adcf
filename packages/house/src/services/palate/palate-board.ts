import {
  heldLevel,
  labelLevel,
  type LearnedLevels,
  type TableNote,
  type ToldOf,
} from "@partsproof/core/palate";
import { ATTRIBUTES, attributeName } from "@partsproof/core/sensory";
import type { LearnedLevel, LearnedProfile, PalateBoard } from "../../protocol/index.ts";
import { LEVEL } from "../profiles/index.ts";
import type { WhiskeyRow } from "../rows.ts";
import { type Shelf, whiskeyLabel } from "../shelf/index.ts";
import { type LearnedHere, levelsOf, type PalateRead } from "./learned-here.ts";
import type { HangingRecipes } from "./hanging-recipes.ts";
import { nextNotes } from "./next-notes.ts";
import { labelOf, THE_SHELF } from "./table-notes.ts";
import { toldOf } from "./told-of.ts";

const METHOD =
  "levels are normal about what labels say (weakly, learned anew from the notes), by all notes of whiskeys and of mixes together, a mix the mean of its parts by share and off that by what is learned; each taster's offset, stretch, bias and noise learned and taken out, on the scale that the table has in common; intervals of 95 %, held within 0 to 10. A note tells of others too: of those in a mix with it, and those like it by their labels. What was not spoken of says nothing";

/** All that a board is of. */
export type BoardRead = PalateRead & { readonly hanging: HangingRecipes };

const plural = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** PA4: one whiskey as the table is believed to taste it. */
export function learnedProfile(
  shelf: Shelf,
  row: WhiskeyRow,
  here: LearnedHere,
  read: BoardRead,
): LearnedProfile {
  const label = whiskeyLabel(row);
  const { levels: learned } = here;
  const i = learned.whiskeys.indexOf(row.id);
  const found = levelsOf(learned, row.id);
  const own = [...here.shelf, ...here.sheets].filter(({ parts }) => aloneIn(parts, row.id));
  const levels = ATTRIBUTES.flatMap(({ id: attribute }): LearnedLevel[] => {
    const level = found[attribute];
    const counted = learned.attributes.find(({ id }) => id === attribute);
    if (level === undefined || counted === undefined) return [];
    const said = own.flatMap(({ says }) => says[attribute]?.mean ?? []);
    return [
      {
        attribute,
        learned: { attribute, ...level },
        label: { attribute, ...heldLevel(labelLevel(labelOf(row), attribute), LEVEL) },
        raw:
          said.length === 0
            ? null
            : { mean: said.reduce((sum, x) => sum + x, 0) / said.length, notes: said.length },
        inMixes: counted.inMixes[i] ?? 0,
      },
    ];
  });
  return {
    whiskeyId: row.id,
    label,
    headline: headlineOf(label, levels, toldOf(here, row.id), here.sheets.length),
    levels,
    next: nextNotes(shelf, here, read).next.find(({ key }) => key === `whiskey:${row.id}`) ?? null,
    level: LEVEL,
    method: METHOD,
  };
}

const aloneIn = (parts: TableNote["parts"], id: string): boolean =>
  parts[id] !== undefined && Object.keys(parts).length === 1;

function headlineOf(
  label: string,
  levels: readonly LearnedLevel[],
  { alone, written, inMixes }: ToldOf,
  sheets: number,
): string {
  if (levels.length === 0)
    return `Nobody has said yet what ${label} tastes of, nor any mix that held it: there is only its label.`;
  const rests = [
    ...(alone > 0 ? [plural(alone, "note")] : []),
    ...(written ? ["what the shelf says"] : []),
    ...(inMixes > 0 ? [`${plural(inMixes, "note")} of mixes that held it`] : []),
  ];
  const told = levels.filter(({ learned, label: before }) => learned.sd < before.sd);
  const high = told.toSorted((a, b) => b.learned.mean - a.learned.mean).slice(0, 3);
  const most = high.map(({ attribute, learned }) => `${attributeName(attribute)} ${learned.mean.toFixed(1)}`);
  const from = rests.length < 2 ? rests.join("") : `${rests.slice(0, -1).join(", ")} and ${rests.at(-1)}`;
  const sealed = sheets === 0 ? " No revealed flight teaches anything yet." : "";
  return `${label} tastes to you most of ${most.join(", ")}, by its label, ${from}.${sealed}`;
}

/** What was learned of the table, and what to taste next. */
export function palateBoard(
  shelf: Shelf,
  here: LearnedHere,
  read: BoardRead,
  names: ReadonlyMap<string, string>,
): PalateBoard {
  const { next, doubt } = nextNotes(shelf, here, read);
  const [first] = next;
  return {
    headline:
      here.levels.attributes.length === 0
        ? "Nobody has said yet what anything tastes of: any note teaches."
        : first === undefined
          ? "There is nothing on the shelf that a note could teach about."
          : `To learn most, taste ${first.label}.`,
    next: [...next],
    doubt,
    tasters: tastersOf(here.levels, names),
    mixing: here.levels.mixing,
    counted: {
      notes: here.sheets.length,
      flights: new Set(read.sayings.map(({ flightId }) => flightId)).size,
      shelf: here.shelf.length,
    },
    silent: here.silent.map((one) => ({ ...one })),
    method: METHOD,
  };
}

const tastersOf = ({ tasters }: LearnedLevels, names: ReadonlyMap<string, string>): PalateBoard["tasters"] =>
  tasters.map(({ taster, ...scale }) =>
    taster === THE_SHELF
      ? { tasterId: null, taster: "what the shelf says", ...scale }
      : { tasterId: taster, taster: names.get(taster) ?? "", ...scale },
  );
