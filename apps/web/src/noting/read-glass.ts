import {
  ENGLISH,
  learnFrom,
  type LearnedWord,
  type NoteRead,
  type Observation,
  openReader,
  phraseOf,
  profileOf,
  taughtIn,
} from "@partsproof/core/notes";
import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { Chip, Sense } from "./chip.ts";
import { isOf, type Mark } from "./mark.ts";

/** The notes of one glass in one pass. */
export type GlassNotes = Readonly<Record<Sense, string>>;

export interface GlassRead {
  /** In the order of the notes and of their words. */
  readonly chips: readonly Chip[];
  /** What they come to, by "section/attribute", in whole numbers: a word is no finer a measure. */
  readonly strengths: ReadonlyMap<string, number>;
  /** Words that the notes themselves say the meaning of ("by attic I mean musty"): to be taught by a tap. */
  readonly offers: readonly LearnedWord[];
}

interface Said {
  readonly chip: Chip;
  readonly observation: Observation;
  readonly byHand: boolean;
}

const SENSES: readonly Sense[] = ["nose", "palate", "finish"];
/** The basic tastes and words for the whole have no strength on a sheet: they stay words. */
const MEASURED: ReadonlySet<string> = new Set(ATTRIBUTES.map(({ id }) => id));
let by: readonly LearnedWord[] = [];
let reader = openReader(ENGLISH);
/** While one note is written the other two stay as they are. */
const last = new Map<Sense, NoteRead & { readonly text: string }>();

/** Reads the notes of a glass by these words, with what was put right in them. Never throws. */
export function readGlass(
  notes: GlassNotes,
  marks: readonly Mark[],
  words: readonly LearnedWord[] = [],
): GlassRead {
  readBy(words);
  const said = SENSES.flatMap((sense) =>
    saidIn(sense, notes[sense]).flatMap(({ observation, doubted }) =>
      chipOf(sense, notes[sense], observation, doubted, marks),
    ),
  );
  const byKey = new Map<string, Said[]>();
  for (const one of said) {
    const { section, attribute } = one.chip;
    if (!MEASURED.has(attribute)) continue;
    const key = `${section}/${attribute}`;
    byKey.set(key, [...(byKey.get(key) ?? []), one]);
  }
  return {
    chips: said.map(({ chip }) => chip),
    strengths: new Map([...byKey].map(([key, all]) => [key, strengthOf(all)])),
    offers: taughtIn(SENSES.map((sense) => notes[sense]).join("\n"), ENGLISH, words),
  };
}

function readBy(words: readonly LearnedWord[]): void {
  if (JSON.stringify(words) === JSON.stringify(by)) return;
  by = words;
  reader = openReader(ENGLISH, words);
  last.clear();
}

/**
 * What a chip that was put right teaches: that its words always mean `to`.
 *
 * @returns null where no phrase would make the difference
 */
export function lessonOf(
  chip: Pick<Chip, "sense" | "quote" | "words">,
  notes: GlassNotes,
  to: LearnedWord["attribute"],
  words: readonly LearnedWord[],
): LearnedWord | null {
  const { sense, quote } = chip;
  const read = { quote, word: chip.words };
  return learnFrom({ text: notes[sense], where: sense, read, to }, ENGLISH, words);
}

/** What a note says in its order, with what the reader doubts. */
function saidIn(
  sense: Sense,
  text: string,
): readonly { readonly observation: Observation; readonly doubted: boolean }[] {
  if (text.trim() === "") return [];
  let read = last.get(sense);
  if (read?.text !== text) last.set(sense, (read = { text, ...reader(text, sense) }));
  return [
    ...read.observations.map((observation) => ({ observation, doubted: false })),
    ...read.doubted.map((observation) => ({ observation, doubted: true })),
  ].toSorted((a, b) => a.observation.quote[0] - b.observation.quote[0]);
}

function chipOf(
  sense: Sense,
  text: string,
  read: Observation,
  doubted: boolean,
  marks: readonly Mark[],
): readonly Said[] {
  const [start, end] = read.quote;
  const { attribute, where: section, stance } = read;
  const own = by.some(({ phrase }) => phraseOf(phrase) === read.word);
  const as = { sense, words: text.slice(start, end), from: `${section}/${attribute}`, own };
  const mark = marks.find((one) => isOf(one, as));
  // What the reader doubts is a chip for whoever has put it right, and for nobody else.
  if (mark?.to === null || (doubted && mark === undefined)) return [];
  const put = mark?.to ?? { attribute, section, strength: whole(read.strength, stance !== "absent") };
  return [
    {
      chip: { ...as, ...put, quote: read.quote, stance },
      observation: { ...read, attribute: put.attribute, where: put.section },
      byHand: mark !== undefined,
    },
  ];
}

/** What was put right by hand counts alone; what was only read is pooled as every profile is. */
function strengthOf(all: readonly Said[]): number {
  const byHand = all.filter((one) => one.byHand);
  if (byHand.length > 0)
    return Math.round(byHand.reduce((sum, { chip }) => sum + chip.strength, 0) / byHand.length);
  const pooled = profileOf(all.map(({ observation }) => observation));
  const mean = Object.values(pooled)[0]?.mean ?? 0;
  return whole(
    mean,
    all.some(({ chip }) => chip.stance !== "absent"),
  );
}

/** 0 is kept for what is not there. */
const whole = (strength: number, there: boolean): number =>
  there ? Math.max(1, Math.round(strength)) : Math.round(strength);
