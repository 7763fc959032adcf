import { type Identification, identification } from "@partsproof/core/sensory";
import { midranks } from "@partsproof/core/statistics";
import type { Finding } from "../../protocol/index.ts";
import { luckOf } from "./luck.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";
import { setsOf, type TasterNames } from "../flights/index.ts";

export interface FoundSheet {
  readonly shown: Finding["sheets"][number];
  /** Null where nothing was guessed, or the sheet was never locked. */
  readonly identified: Identification | null;
  /** The rank of each glass by glass number, ties sharing the mean rank, null for one not served here; null where none. */
  readonly ranks: readonly (number | null)[] | null;
  readonly scores: readonly { readonly glass: number; readonly score: number }[];
}

/** One sheet beside the truth. A sheet that was closed shows its notes and the truth, and counts for nothing. */
export function foundSheet(
  flight: FlightRow,
  key: FlightKey,
  sheet: SheetRow,
  names: TasterNames,
): FoundSheet {
  const locked = sheet.state === "locked";
  const glassOf = glassesBehind(key, sheet);
  const truth = glassOf.map((glass) => key.glasses[glass]);
  const guesses = sheet.order.map((code) =>
    locked ? (sheet.guesses.find((guess) => guess.code === code)?.nameId ?? null) : null,
  );
  const guessed = guesses.filter((guess) => guess !== null).length;
  const offer = Object.fromEntries(flight.namesOnOffer.map(({ nameId, count }) => [nameId, count]));
  const identified =
    guessed === 0
      ? null
      : identification({ truth: truth.map((glass) => glass?.nameId ?? ""), guesses, offer });
  const offered = flight.namesOnOffer.reduce((sum, { count }) => sum + count, 0);
  const method = `exact, ${guessed} ${guessed === 1 ? "glass" : "glasses"} named from ${offered} names on offer`;
  const ranking = locked ? sheet.ranking : null;
  const rankAt = ranking === null ? null : ranksInOrder(sheet.order, ranking);
  const rounds = locked ? roundRanks(sheet) : new Map<string, number>();
  const sets = setsOf(flight, sheet.order);
  const notesOf = (code: string) => sheet.notes.find((notes) => notes.code === code) ?? null;
  return {
    identified,
    ranks: rankAt === null ? null : key.glasses.map((_, glass) => rankAt[glassOf.indexOf(glass)] ?? null),
    scores: sheet.order.flatMap((code, i) => {
      const score = locked ? (notesOf(code)?.score ?? null) : null;
      return score === null ? [] : [{ glass: glassOf[i] ?? 0, score }];
    }),
    shown: {
      sheetId: sheet.id,
      tasterId: sheet.tasterId,
      taster: names.get(sheet.tasterId) ?? "",
      state: sheet.state as FoundSheet["shown"]["state"],
      lockedAt: sheet.lockedAt,
      typedBy: sheet.typedBy,
      glasses: sheet.order.map((code, i) => {
        const nameId = truth[i]?.nameId ?? "";
        const guess = guesses[i] ?? null;
        return {
          position: i + 1,
          set: sets.length === 0 ? null : sets.findIndex((set) => set.includes(code)) + 1,
          code,
          glass: glassOf[i] ?? 0,
          nameId,
          label: truth[i]?.label ?? "",
          sure: guess === null ? null : (sheet.guesses.find((one) => one.code === code)?.sure ?? null),
          guessNameId: guess,
          guessLabel: flight.namesOnOffer.find((name) => name.nameId === guess)?.label ?? null,
          right: guess === null ? null : guess === nameId,
          rank: rankAt?.[i] ?? rounds.get(code) ?? null,
          notes: notesOf(code),
          strengths: sheet.strengths.filter((said) => said.code === code).map(({ code: _, ...said }) => said),
        };
      }),
      guessed,
      right: identified?.right ?? 0,
      luck: identified === null ? null : luckOf(identified.law, identified.right, method),
      ranking: ranking === null ? null : ranking.map((tie) => [...tie]),
    },
  };
}

/** Where each glass was put in its round; no two are level there (Q9). */
const roundRanks = ({ answers }: SheetRow): Map<string, number> =>
  new Map(answers.flatMap(({ ranking }) => (ranking ?? []).flat().map((code, i) => [code, i + 1] as const)));

/** The glass numbers behind the codes of a sheet, in tasting order. */
function glassesBehind(key: FlightKey, sheet: SheetRow): number[] {
  const byCode = new Map(
    key.codes.filter(({ sheetId }) => sheetId === sheet.id).map(({ code, glass }) => [code, glass]),
  );
  return sheet.order.map((code) => {
    const glass = byCode.get(code);
    if (glass === undefined)
      throw new Error(`the key requires every code of sheet ${sheet.id}, lacks ${code}`);
    return glass;
  });
}

function ranksInOrder(order: readonly string[], ranking: readonly (readonly string[])[]): number[] {
  return midranks(order.map((code) => ranking.findIndex((tie) => tie.includes(code))));
}
