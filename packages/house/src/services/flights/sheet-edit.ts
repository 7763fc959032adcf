import type { Issue, SetAnswer, SheetEdit } from "../../protocol/index.ts";
import { answerIssues } from "./answer-issues.ts";
import { issue, unknownCode } from "./edit-issue.ts";
import { notAsked } from "./not-asked.ts";
import { rankingIssues } from "./ranking-issues.ts";
import type { FlightRow, SheetGuess, SheetRow } from "../rows.ts";
import { strengthIssues, strengthsAfter } from "./written-strengths.ts";

type Written = Pick<SheetRow, "notes" | "guesses" | "ranking" | "answers" | "strengths" | "typedBy">;

/**
 * What a sheet would say after an edit, or all that is wrong with the edit. Only the glasses named are replaced;
 * a guess of null takes the guess back; a ranking replaces the whole ranking; only the sets named are answered anew.
 */
export function writtenAfter(
  flight: FlightRow,
  sheet: SheetRow,
  edit: Omit<SheetEdit, "version">,
): { readonly written: Written; readonly issues: readonly Issue[] } {
  const notes = edit.notes ?? [];
  const guesses = edit.guesses ?? [];
  const written = {
    notes: merged(sheet.order, sheet.notes, notes),
    guesses: merged(sheet.order, sheet.guesses, guesses),
    ranking: edit.ranking === undefined ? sheet.ranking : edit.ranking,
    answers: answered(sheet.answers, edit.answers ?? []),
    strengths: strengthsAfter(sheet.order, sheet.strengths, edit.strengths ?? []),
    typedBy: edit.typedBy ?? sheet.typedBy,
  };
  const unasked = notAsked(flight, edit);
  if (unasked.length > 0) return { written, issues: unasked };
  const issues = [
    ...answerIssues(flight, sheet, edit.answers ?? []),
    ...codeIssues("notes", notes, sheet),
    ...codeIssues("guesses", guesses, sheet),
    ...guessIssues(flight, sheet, guesses),
    ...strengthIssues(edit.strengths ?? [], sheet),
    ...(edit.ranking ? rankingIssues(edit.ranking, sheet.order, ["ranking"]) : []),
  ];
  return { written, issues };
}

/** In tasting order, whatever order the edit had: the order of writing is nobody's business. */
function merged<T extends { readonly code: string }>(
  order: readonly string[],
  old: readonly T[],
  edit: readonly T[],
): T[] {
  const byCode = new Map([...old, ...edit].map((entry) => [entry.code, entry]));
  return order.flatMap((code) => byCode.get(code) ?? []);
}

/** In the order of the sets; what is taken back leaves no answer. */
function answered(old: readonly SetAnswer[], edit: readonly SetAnswer[]): SetAnswer[] {
  const bySet = new Map([...old, ...edit].map((answer) => [answer.set, answer]));
  return [...bySet.values()]
    .filter(({ picked, ranking }) => picked !== null || ranking !== null)
    .toSorted((a, b) => a.set - b.set);
}

function codeIssues(list: string, entries: readonly { readonly code: string }[], sheet: SheetRow): Issue[] {
  return entries.flatMap(({ code }, i) => {
    const path = [list, i, "code"];
    if (!sheet.order.includes(code)) return [unknownCode(path, code, sheet)];
    if (entries.findIndex((other) => other.code === code) < i) {
      return [issue("glass_named_twice", path, `each glass once in the ${list}`, code, "an edit")];
    }
    return [];
  });
}

/** Guesses that stand outside the edit come first; the glasses of the edit that find no name left are told. */
function guessIssues(flight: FlightRow, sheet: SheetRow, guesses: readonly SheetGuess[]): Issue[] {
  const edited = new Set(guesses.map(({ code }) => code));
  const used = new Map<string, number>();
  const use = (nameId: string): number => {
    used.set(nameId, (used.get(nameId) ?? 0) + 1);
    return used.get(nameId) ?? 0;
  };
  for (const { code, nameId } of sheet.guesses) if (nameId !== null && !edited.has(code)) use(nameId);
  return guesses.flatMap(({ nameId, sure }, i) => {
    if (nameId === null)
      return sure === undefined
        ? []
        : [issue("sure_without_guess", ["guesses", i, "sure"], "a name to be sure of", sure, "how sure")];
    const path = ["guesses", i, "nameId"];
    const offered = flight.namesOnOffer.find((name) => name.nameId === nameId);
    if (!offered) {
      return [issue("name_not_offered", path, "one of the names on offer", nameId, "a guess")];
    }
    const times = use(nameId);
    if (times <= offered.count) return [];
    return [
      {
        code: "name_used_too_often",
        path,
        limit: `${offered.count} ${offered.count === 1 ? "glass" : "glasses"} for this name`,
        received: times,
        message: `${offered.label} requires at most ${offered.count} of the guesses, got ${times}`,
      },
    ];
  });
}
