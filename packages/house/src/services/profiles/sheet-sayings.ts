import {
  type NoteReader,
  type Observation,
  type Profile,
  profileOf,
  type Where,
} from "@partsproof/core/notes";
import { ATTRIBUTES } from "@partsproof/core/sensory";
import { SECTIONS } from "../../protocol/index.ts";
import type { EntryRow, SheetRow } from "../rows.ts";

/** What one sheet says of one glass. */
export interface GlassSaying {
  readonly code: string;
  /** All of it, and by parts of the tasting. */
  readonly whole: Profile;
  readonly sections: Readonly<Partial<Record<Where, Profile>>>;
}

/** A strength set by hand or tapped is off by about so much, one standard deviation. Common practice, no source. */
const SET_SD = 1;
const PASSES = ["first", "second"] as const;
/** The basic tastes and words for the whole hold opposites: one intensity says nothing of them. */
const MEASURED: ReadonlySet<string> = new Set(ATTRIBUTES.map(({ id }) => id));

type Said = Pick<Observation, "attribute" | "where" | "strength" | "spread">;

const placeOf = (pass: string, where: string, attribute: string): string => `${pass}/${where}/${attribute}`;

/**
 * Y1: a strength on the sheet is the taster's own word, 0 too; of what its notes say besides, only what was not taken back by hand. A
 * glass of which nothing was said is not there.
 */
export function glassSayings(sheet: SheetRow, entries: readonly EntryRow[], read: NoteReader): GlassSaying[] {
  return sheet.order.flatMap((code) => {
    const said = PASSES.flatMap((pass) => saidInPass(sheet, entries, read, code, pass));
    if (said.length === 0) return [];
    const all = said.map(
      (one) => ({ ...one, quote: [0, 0], word: "", stance: "present", who: "this" }) as const,
    );
    const spoken = SECTIONS.filter((where) => said.some((one) => one.where === where));
    return [
      {
        code,
        whole: profileOf(all),
        sections: Object.fromEntries(spoken.map((where) => [where, profileOf(all, where)])),
      },
    ];
  });
}

function saidInPass(
  { notes, strengths }: SheetRow,
  entries: readonly EntryRow[],
  read: NoteReader,
  code: string,
  pass: (typeof PASSES)[number],
): Said[] {
  const set = strengths.filter((one) => one.code === code && one.pass === pass);
  const byHand = new Set(set.map(({ section, attribute }) => placeOf(pass, section, attribute)));
  for (const place of takenBack(entries, code, pass)) byHand.add(place);
  const note = notes.find((one) => one.code === code)?.[pass];
  const words = (["nose", "palate", "finish"] as const).flatMap((where) =>
    note === undefined || note[where].trim() === "" ? [] : read(note[where], where).observations,
  );
  return [
    ...set.map(({ section, attribute, strength }) => ({
      attribute,
      where: section,
      strength,
      spread: SET_SD,
    })),
    ...words.filter(
      ({ who, attribute, where }) =>
        who === "this" && MEASURED.has(attribute) && !byHand.has(placeOf(pass, where, attribute)),
    ),
  ];
}

/** What was set and taken back, by the last entry that speaks of it. */
function takenBack(entries: readonly EntryRow[], code: string, pass: string): Set<string> {
  const back = new Set<string>();
  for (const { written } of entries.toSorted((a, b) => a.number - b.number))
    for (const one of written.strengths ?? []) {
      if (one.code !== code || one.pass !== pass) continue;
      const place = placeOf(pass, one.section, one.attribute);
      if (one.strength === null) back.add(place);
      else back.delete(place);
    }
  return back;
}
