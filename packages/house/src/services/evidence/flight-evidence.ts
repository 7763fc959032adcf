import type { NoteReader } from "@partsproof/core/notes";
import type { z } from "zod";
import type { DiscriminationMethod, QuestionId } from "../../protocol/index.ts";
import { foundSets } from "../findings/index.ts";
import { asksOf, designOf, questionOf, setsOf } from "../flights/index.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";
import { type WrittenWords, writtenWords } from "./written-words.ts";

/** One order of glasses, by glass number, with the order they were served in. */
export interface Placed {
  /** Best (closest) first; an inner list is a tie. */
  readonly ranking: readonly (readonly number[])[];
  readonly served: readonly number[];
}

export interface SheetEvidence {
  readonly sheetId: string;
  readonly tasterId: string;
  /** Glass numbers in the order tasted. */
  readonly order: readonly number[];
  readonly placed: readonly Placed[];
  /** Name guessed at each place of the order; null for none. Empty where no guess was asked. */
  readonly guesses: readonly (string | null)[];
  /** How sure each guess was, in per cent; null where that was not said. */
  readonly sure: readonly (number | null)[];
  readonly scores: readonly (number | null)[];
  /** What was written at each place; null where nothing was. Read when it is first asked for: most pages need no words. */
  readonly written: () => readonly (WrittenWords | null)[];
}

export interface SetsEvidence {
  readonly method: z.infer<typeof DiscriminationMethod>;
  readonly sides: 1 | 2;
  /** Of pairs, what was asked for: "Which of the two is …?" */
  readonly asked: string | null;
  readonly sheets: readonly {
    readonly tasterId: string;
    readonly answered: number;
    readonly right: number;
    /** How often each of the two was picked, by glass number. */
    readonly picked: readonly number[];
  }[];
}

/** What one revealed flight has to say: its locked sheets beside its key. */
export interface FlightEvidence {
  readonly flightId: string;
  readonly name: string;
  readonly revealedAt: string;
  readonly question: QuestionId;
  readonly glasses: readonly { readonly nameId: string; readonly label: string }[];
  readonly labels: ReadonlyMap<string, string>;
  readonly offer: Readonly<Record<string, number>>;
  readonly targetNameId: string | null;
  readonly sheets: readonly SheetEvidence[];
  readonly sets: SetsEvidence | null;
}

function sheetEvidence(flight: FlightRow, key: FlightKey, sheet: SheetRow, read: NoteReader): SheetEvidence {
  const own = key.codes.filter(({ sheetId }) => sheetId === sheet.id);
  const glassOf = (code: string, set?: number): number =>
    own.find((row) => row.code === code && (set === undefined || row.set === set))?.glass ?? 0;
  const order = sheet.order.map((code) => glassOf(code));
  const asks = asksOf(questionOf(flight));
  const whole: Placed[] =
    sheet.ranking === null
      ? []
      : [{ ranking: sheet.ranking.map((tie) => tie.map((code) => glassOf(code))), served: order }];
  const rounds = setsOf(flight, sheet.order).flatMap((codes, i): Placed[] => {
    const ranking = sheet.answers.find(({ set }) => set === i + 1)?.ranking ?? null;
    if (ranking === null) return [];
    return [
      {
        ranking: ranking.map((tie) => tie.map((code) => glassOf(code, i + 1))),
        served: codes.map((code) => glassOf(code, i + 1)),
      },
    ];
  });
  let written: readonly (WrittenWords | null)[] | null = null;
  const notesOf = (code: string) => sheet.notes.find((notes) => notes.code === code);
  return {
    sheetId: sheet.id,
    tasterId: sheet.tasterId,
    order,
    placed: asks.answers === "ranking" ? rounds : whole,
    guesses: asks.guesses
      ? sheet.order.map((code) => sheet.guesses.find((guess) => guess.code === code)?.nameId ?? null)
      : [],
    sure: asks.guesses
      ? sheet.order.map((code) => sheet.guesses.find((guess) => guess.code === code)?.sure ?? null)
      : [],
    scores: sheet.order.map((code) => notesOf(code)?.score ?? null),
    written: () => {
      written ??= sheet.order.map((code) => writtenWords(sheet, code, read));
      return written;
    },
  };
}

function setsEvidence(flight: FlightRow, key: FlightKey, sheets: readonly SheetRow[]): SetsEvidence | null {
  const found = foundSets(flight, key, sheets, new Map());
  if (found === null) return null;
  return {
    method: found.shown.method,
    sides: designOf(flight).sides ?? 1,
    asked: designOf(flight).asked,
    sheets: found.shown.sheets
      .filter(({ counted, answered }) => counted && answered > 0)
      .map(({ tasterId, answered, right, sets }) => ({
        tasterId,
        answered,
        right: right ?? 0,
        picked: key.glasses.map(
          (_, i) =>
            sets.filter(({ glasses, picked }) =>
              glasses.some(({ code, glass }) => glass === i && picked?.includes(code) === true),
            ).length,
        ),
      })),
  };
}

/** Throws unless the flight is revealed: its key is nobody's business before. */
export function flightEvidence(
  flight: FlightRow,
  key: FlightKey,
  rows: readonly SheetRow[],
  read: NoteReader,
): FlightEvidence {
  if (flight.state !== "revealed") {
    throw new Error(`evidence requires a flight that is revealed, got ${flight.id}, ${flight.state}`);
  }
  const locked = rows.filter(({ state }) => state === "locked");
  return {
    flightId: flight.id,
    name: flight.name,
    revealedAt: flight.revealedAt ?? "",
    question: questionOf(flight),
    glasses: key.glasses.map(({ nameId, label }) => ({ nameId, label })),
    labels: new Map([...flight.namesOnOffer, ...key.glasses].map(({ nameId, label }) => [nameId, label])),
    offer: Object.fromEntries(flight.namesOnOffer.map(({ nameId, count }) => [nameId, count])),
    targetNameId: flight.targetNameId,
    sheets: locked.map((sheet) => sheetEvidence(flight, key, sheet, read)),
    sets: setsEvidence(flight, key, locked),
  };
}
