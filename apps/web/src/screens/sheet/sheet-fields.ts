import type { BodyOf, GlassNotes, Ranking, Sheet } from "@partsproof/house/protocol";
import type { z } from "zod";

export type RankOrder = z.infer<typeof Ranking>;
export type FieldValue = string | number | RankOrder;

export const PASSES = ["first", "second"] as const;
export type Pass = (typeof PASSES)[number];
export const SENSES = ["nose", "palate", "finish"] as const;
export type Sense = (typeof SENSES)[number];

/** A sheet as flat fields, so that what was changed on two devices can be joined field by field. */
export type Fields = ReadonlyMap<string, FieldValue>;

export const noteKey = (code: string, pass: Pass, sense: Sense): string => `note/${code}/${pass}/${sense}`;
export const scoreKey = (code: string): string => `score/${code}`;
export const guessKey = (code: string): string => `guess/${code}`;
export const RANKING = "ranking";

export function fieldsOf(sheet: Pick<Sheet, "glasses" | "notes" | "guesses" | "ranking">): Fields {
  const fields = new Map<string, FieldValue>([[RANKING, sheet.ranking]]);
  for (const { code } of sheet.glasses) {
    const notes = sheet.notes.find((one) => one.code === code);
    for (const pass of PASSES) {
      for (const sense of SENSES) fields.set(noteKey(code, pass, sense), notes?.[pass][sense] ?? "");
    }
    fields.set(scoreKey(code), notes?.score ?? null);
    fields.set(guessKey(code), sheet.guesses.find((one) => one.code === code)?.nameId ?? null);
  }
  return fields;
}

export function sameValue(a: FieldValue | undefined, b: FieldValue | undefined): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

const text = (fields: Fields, key: string): string => String(fields.get(key) ?? "");

export function notesIn(fields: Fields, code: string): z.infer<typeof GlassNotes> {
  const pass = (which: Pass) => ({
    nose: text(fields, noteKey(code, which, "nose")),
    palate: text(fields, noteKey(code, which, "palate")),
    finish: text(fields, noteKey(code, which, "finish")),
  });
  const score = fields.get(scoreKey(code));
  return {
    code,
    first: pass("first"),
    second: pass("second"),
    score: typeof score === "number" ? score : null,
  };
}

export function guessIn(fields: Fields, code: string): string | null {
  const guess = fields.get(guessKey(code));
  return typeof guess === "string" ? guess : null;
}

export function rankingIn(fields: Fields): RankOrder {
  const ranking = fields.get(RANKING);
  return Array.isArray(ranking) ? ranking : null;
}

/** What an entry says so that the changed fields are kept; a glass's notes go whole. */
export function editOf(
  fields: Fields,
  changed: Iterable<string>,
  codes: readonly string[],
): Omit<BodyOf<"addEntry">, "key" | "after"> {
  const keys = new Set(changed);
  const noted = codes.filter((code) =>
    [...keys].some((key) => key.startsWith(`note/${code}/`) || key === scoreKey(code)),
  );
  const guessed = codes.filter((code) => keys.has(guessKey(code)));
  return {
    ...(noted.length > 0 ? { notes: noted.map((code) => notesIn(fields, code)) } : {}),
    ...(guessed.length > 0
      ? { guesses: guessed.map((code) => ({ code, nameId: guessIn(fields, code) })) }
      : {}),
    ...(keys.has(RANKING) ? { ranking: rankingIn(fields) } : {}),
  };
}
