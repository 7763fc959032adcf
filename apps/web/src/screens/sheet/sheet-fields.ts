import { type AttributeId, ATTRIBUTES } from "@partsproof/core/sensory";
import type { BodyOf, GlassNotes, Ranking, Sheet, SheetStrength } from "@partsproof/house/protocol";
import type { z } from "zod";

export type RankOrder = z.infer<typeof Ranking>;
export type FieldValue = string | number | RankOrder;

export const PASSES = ["first", "second"] as const;
export type Pass = (typeof PASSES)[number];
export const SENSES = ["nose", "palate", "finish"] as const;
export type Sense = (typeof SENSES)[number];
/** What an intensity is about: one of the senses, or the glass as a whole. */
export type Section = Sense | "whole";

/** A sheet as flat fields, so that what was changed on two devices can be joined field by field. */
export type Fields = ReadonlyMap<string, FieldValue>;

export const noteKey = (code: string, pass: Pass, sense: Sense): string => `note/${code}/${pass}/${sense}`;
export const scoreKey = (code: string): string => `score/${code}`;
const STRENGTH = "strength/";
export const strengthKey = (code: string, pass: Pass, section: Section, attribute: string): string =>
  `${STRENGTH}${code}/${pass}/${section}/${attribute}`;
export const guessKey = (code: string): string => `guess/${code}`;
/** How sure that guess is, in per cent; null where that is not said. */
export const sureKey = (code: string): string => `sure/${code}`;
export const RANKING = "ranking";
/** The answer to a set: codes picked, a space between, or an order; null for none. */
export const answerKey = (set: number): string => `answer/${set}`;

export function fieldsOf(
  sheet: Pick<Sheet, "glasses" | "notes" | "strengths" | "guesses" | "ranking" | "sets">,
): Fields {
  const fields = new Map<string, FieldValue>([[RANKING, sheet.ranking]]);
  for (const { set, picked, ranking } of sheet.sets) {
    fields.set(answerKey(set), picked?.toSorted().join(" ") ?? ranking);
  }
  for (const { code, pass, section, attribute, strength } of sheet.strengths) {
    fields.set(strengthKey(code, pass, section, attribute), strength);
  }
  for (const { code } of sheet.glasses) {
    const notes = sheet.notes.find((one) => one.code === code);
    for (const pass of PASSES) {
      for (const sense of SENSES) fields.set(noteKey(code, pass, sense), notes?.[pass][sense] ?? "");
    }
    fields.set(scoreKey(code), notes?.score ?? null);
    const guess = sheet.guesses.find((one) => one.code === code);
    fields.set(guessKey(code), guess?.nameId ?? null);
    fields.set(sureKey(code), guess?.sure ?? null);
  }
  return fields;
}

/** A field that is not there says nothing: of the many intensities that could be said only those said are fields. */
export function sameValue(a: FieldValue | undefined, b: FieldValue | undefined): boolean {
  return a === b || JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
}

/** Whether a sheet has this field, with something in it or not. */
export const isFieldOf = (fields: Fields, key: string): boolean =>
  fields.has(key) || (key.startsWith(STRENGTH) && fields.has(scoreKey(key.split("/")[1] ?? "")));

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

/** How strong a glass is in a pass and section, by attribute, in the order of core's list. Nothing said is not 0. */
export function strengthsIn(
  fields: Fields,
  code: string,
  pass: Pass,
  section: Section,
): ReadonlyMap<AttributeId, number> {
  return new Map(
    ATTRIBUTES.flatMap(({ id }) => {
      const strength = fields.get(strengthKey(code, pass, section, id));
      return typeof strength === "number" ? [[id, strength] as const] : [];
    }),
  );
}

/** All that is said of how strong a glass is. */
export const allStrengthsIn = (fields: Fields, code: string): readonly Omit<SheetStrength, "code">[] =>
  PASSES.flatMap((pass) =>
    ([...SENSES, "whole"] as const).flatMap((section) =>
      [...strengthsIn(fields, code, pass, section)].map(([attribute, strength]) => ({
        pass,
        section,
        attribute,
        strength,
      })),
    ),
  );

export function guessIn(fields: Fields, code: string): string | null {
  const guess = fields.get(guessKey(code));
  return typeof guess === "string" ? guess : null;
}

/** How sure the guess is; null where there is none, or it was not said. */
export function sureIn(fields: Fields, code: string): number | null {
  const sure = fields.get(sureKey(code));
  return typeof sure === "number" && guessIn(fields, code) !== null ? sure : null;
}

/** A guess as it is sent: without a name there is nothing to be sure of. */
function guessOf(fields: Fields, code: string): NonNullable<BodyOf<"addEntry">["guesses"]>[number] {
  const sure = sureIn(fields, code);
  return { code, nameId: guessIn(fields, code), ...(sure === null ? {} : { sure }) };
}

export function rankingIn(fields: Fields): RankOrder {
  const ranking = fields.get(RANKING);
  return Array.isArray(ranking) ? ranking : null;
}

/** The codes picked in a set; none where nothing is answered. */
export function pickedIn(fields: Fields, set: number): readonly string[] {
  const answer = fields.get(answerKey(set));
  return typeof answer === "string" && answer !== "" ? answer.split(" ") : [];
}

/** The order given to a round. */
export function roundIn(fields: Fields, set: number): RankOrder {
  const answer = fields.get(answerKey(set));
  return Array.isArray(answer) ? answer : null;
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
  const guessed = codes.filter((code) => keys.has(guessKey(code)) || keys.has(sureKey(code)));
  const strengths = [...keys].flatMap((key) => {
    if (!key.startsWith(STRENGTH)) return [];
    const [, code = "", pass, section, attribute] = key.split("/");
    const strength = fields.get(key) ?? null;
    return [
      { code, pass, section, attribute, strength } as NonNullable<BodyOf<"addEntry">["strengths"]>[number],
    ];
  });
  const answered = [...keys].flatMap((key) => (key.startsWith("answer/") ? [Number(key.slice(7))] : []));
  return {
    ...(noted.length > 0 ? { notes: noted.map((code) => notesIn(fields, code)) } : {}),
    ...(guessed.length > 0 ? { guesses: guessed.map((code) => guessOf(fields, code)) } : {}),
    ...(answered.length > 0
      ? {
          answers: answered.map((set) => {
            const picked = pickedIn(fields, set);
            return { set, picked: picked.length === 0 ? null : [...picked], ranking: roundIn(fields, set) };
          }),
        }
      : {}),
    ...(keys.has(RANKING) ? { ranking: rankingIn(fields) } : {}),
    ...(strengths.length > 0 ? { strengths } : {}),
  };
}
