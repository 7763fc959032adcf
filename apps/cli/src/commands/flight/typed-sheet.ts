import type { GlassNotes, Sheet, SheetEdit } from "@partsproof/house/protocol";
import { findNameOnOffer } from "../../door/index.ts";
import {
  type GivenFlags,
  issueAt,
  many,
  one,
  readGlassName,
  readGlassScore,
  readGlassStrength,
  readGlassSure,
  readGlassText,
  readRanking,
  readSetOrder,
  readSetPick,
  readText,
  refuse,
  yes,
} from "../../flags/index.ts";

const words = "<glass>=<text>";

/** What can be written on a sheet, as flags. */
export const sheetFlags = {
  nose: many(readGlassText, words, 'again for each glass: 417="salt, pear"'),
  palate: many(readGlassText, words, "again for each glass"),
  finish: many(readGlassText, words, "again for each glass"),
  nose2: many(readGlassText, words, "second pass"),
  palate2: many(readGlassText, words, "second pass"),
  finish2: many(readGlassText, words, "second pass"),
  score: many(
    readGlassScore,
    "<glass>=<0 to 100>",
    "again for each glass; how close it is where that is asked, 100 the same",
  ),
  strong: many(
    readGlassStrength,
    "<glass>=<section>:<attribute>=<0 to 10>",
    'again for each: 417="nose:smoke=6"; nose, palate, finish or whole; 417="nose:smoke=" takes it back',
  ),
  strong2: many(readGlassStrength, "<glass>=<section>:<attribute>=<0 to 10>", "second pass"),
  guess: many(readGlassName, "<glass>=<name>", "again for each glass: a name on offer; 417= takes it back"),
  sure: many(
    readGlassSure,
    "<glass>=<0 to 100>",
    "how sure that guess is, in per cent; again for each glass",
  ),
  rank: one(readRanking, "<glasses>", 'every glass, best first, "=" for level: "417 > 233 = 508"'),
  "no-rank": yes("take the ranking back"),
  pick: many(
    readSetPick,
    "<set>=<glass>",
    'again for each set: 1=417, in a tetrad two: 1="417 233"; 1= takes it back',
  ),
  order: many(
    readSetOrder,
    "<round>=<glasses>",
    'again for each round: 1="417 > 233 > 508"; 1= takes it back',
  ),
  "typed-by": one(readText("name"), "<name>", "who types this in from a paper sheet"),
};

type Given = GivenFlags<typeof sheetFlags>;
const WORDS = [
  ["nose", "first", "nose"],
  ["palate", "first", "palate"],
  ["finish", "first", "finish"],
  ["nose2", "second", "nose"],
  ["palate2", "second", "palate"],
  ["finish2", "second", "finish"],
] as const;

/** The edit the flags tell of. The house replaces all notes of a glass at once, so the old ones go back with the new. */
export function typedSheet(flags: Given, before: Sheet): SheetEdit {
  if (flags.rank !== undefined && flags["no-rank"]) {
    refuse(issueAt(["no-rank"], "flags_exclude", "no --rank beside it", "--rank --no-rank"));
  }
  const notes = typedNotes(flags, before);
  const guesses = typedGuesses(flags, before);
  const ranking = flags["no-rank"] ? null : flags.rank?.map((group) => [...group]);
  const answers = [
    ...flags.pick.map(([set, codes]) => ({
      set,
      picked: codes.length === 0 ? null : [...codes],
      ranking: null,
    })),
    ...flags.order.map(([set, order]) => ({
      set,
      picked: null,
      ranking: order?.map((level) => [...level]) ?? null,
    })),
  ];
  const strengths = [
    ...flags.strong.map(([code, said]) => ({ code, pass: "first" as const, ...said })),
    ...flags.strong2.map(([code, said]) => ({ code, pass: "second" as const, ...said })),
  ];
  const lists = [notes, guesses, answers, strengths];
  if (lists.every((list) => list.length === 0) && ranking === undefined) {
    refuse(
      issueAt([], "flag_missing", "something to write: --nose, --score, --guess, --rank, --pick, …", null),
    );
  }
  return {
    version: before.version,
    ...(notes.length === 0 ? {} : { notes }),
    ...(guesses.length === 0 ? {} : { guesses }),
    ...(ranking === undefined ? {} : { ranking }),
    ...(answers.length === 0 ? {} : { answers }),
    ...(strengths.length === 0 ? {} : { strengths }),
    ...(flags["typed-by"] === undefined ? {} : { typedBy: flags["typed-by"] }),
  };
}

/** A guess that was given before keeps its name where only how sure it is is said. */
function typedGuesses(flags: Given, before: Sheet): NonNullable<SheetEdit["guesses"]> {
  const sure = new Map(flags.sure);
  const named = flags.guess.map(([code, text], index) => ({
    code,
    nameId: text.trim() === "" ? null : findNameOnOffer(before.namesOnOffer, text, ["guess", index]),
  }));
  const kept = [...sure.keys()]
    .filter((code) => named.every((one) => one.code !== code))
    .map((code) => ({ code, nameId: before.guesses.find((one) => one.code === code)?.nameId ?? null }));
  return [...named, ...kept].map((guess) => {
    const said = sure.get(guess.code);
    return said === undefined ? guess : { ...guess, sure: said };
  });
}

function typedNotes(flags: Given, before: Sheet): GlassNotes[] {
  const notes = new Map<string, GlassNotes>();
  const of = (code: string): GlassNotes =>
    notes.get(code) ??
    before.notes.find((note) => note.code === code) ?? {
      code,
      first: { nose: "", palate: "", finish: "" },
      second: { nose: "", palate: "", finish: "" },
      score: null,
    };
  for (const [flag, pass, field] of WORDS) {
    for (const [code, text] of flags[flag]) {
      const note = of(code);
      notes.set(code, { ...note, [pass]: { ...note[pass], [field]: text } });
    }
  }
  for (const [code, score] of flags.score) notes.set(code, { ...of(code), score });
  return [...notes.values()];
}
