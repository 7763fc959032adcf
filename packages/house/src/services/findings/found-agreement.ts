import { luckVerdict, plainOdds, shownP } from "@partsproof/core/sensory";
import { type CountLaw, countLaw, inversionLaw, poolLaws } from "@partsproof/core/statistics";
import type { AgreementFound } from "../../protocol/index.ts";
import { luckOf } from "./luck.ts";
import { setsOf, type TasterNames } from "../flights/index.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";

type FoundSheet = AgreementFound["sheets"][number];
interface Round {
  readonly glasses: readonly number[];
}

/** The glasses of a round in the order given, best first; null where it was not. */
export function roundsOf(flight: FlightRow, key: FlightKey, sheet: SheetRow): readonly (Round | null)[] {
  const own = key.codes.filter(({ sheetId }) => sheetId === sheet.id);
  return setsOf(flight, sheet.order).map((_, i) => {
    const ranking = sheet.answers.find(({ set }) => set === i + 1)?.ranking ?? null;
    if (ranking === null) return null;
    const glassOf = (code: string) => own.find((row) => row.set === i + 1 && row.code === code)?.glass ?? 0;
    return { glasses: ranking.flat().map(glassOf) };
  });
}

/** Pairs put the same way again: the law of pairs turned round, from the other end. */
export const keptLaw = (glasses: number): CountLaw => countLaw(inversionLaw(glasses).exactly.toReversed());

export function keptOf(first: readonly number[], second: readonly number[]): number {
  const places = first.map((glass) => second.indexOf(glass));
  return places.reduce(
    (sum, place, i) => sum + places.slice(i + 1).filter((later) => later > place).length,
    0,
  );
}

const lawOfSheet = (glasses: number, pairs: number): string =>
  `exact law of pairs turned round, one-sided, ${pairs} ${pairs === 1 ? "pair" : "pairs"} of ${glasses} glasses`;

/** Q14: how far each taster's two orders agree. Null where the question is another. */
export function foundAgreement(
  flight: FlightRow,
  key: FlightKey,
  rows: readonly SheetRow[],
  names: TasterNames,
): { readonly shown: AgreementFound; readonly leftOut: readonly string[] } | null {
  if (flight.question !== "agree_with_myself") return null;
  const size = key.glasses.length;
  const pairs = (size * (size - 1)) / 2;
  const law = keptLaw(size);
  const leftOut: string[] = [];
  const sheets: FoundSheet[] = [];
  for (const row of rows) {
    const taster = names.get(row.tasterId) ?? "";
    const [first, second] = roundsOf(flight, key, row);
    if (row.state !== "locked") leftOut.push(`${taster}'s sheet was not locked: its orders are not counted.`);
    else if (!first || !second) leftOut.push(`${taster} did not put both rounds in order and is left out.`);
    else {
      const kept = keptOf(first.glasses, second.glasses);
      sheets.push({
        sheetId: row.id,
        tasterId: row.tasterId,
        taster,
        kept,
        pairs,
        luck: { ...luckOf(law, kept, lawOfSheet(size, pairs)), words: asMany(law.pAtLeast(kept)) },
        places: key.glasses.map(({ label }, glass) => ({
          glass,
          label,
          first: first.glasses.indexOf(glass) + 1,
          second: second.glasses.indexOf(glass) + 1,
        })),
      });
    }
  }
  const kept = sheets.reduce((sum, sheet) => sum + sheet.kept, 0);
  const pooled = poolLaws(sheets.map(() => law));
  const method =
    sheets.length === 1
      ? lawOfSheet(size, pairs)
      : `${lawOfSheet(size, pairs)}, pooled over ${sheets.length} sheets`;
  const p = pooled.pAtLeast(kept);
  return {
    shown: {
      sheets,
      kept,
      pairs: pairs * sheets.length,
      luck: sheets.length === 0 ? null : { ...luckOf(pooled, kept, method), words: asMany(p) },
      sentence:
        sheets.length === 0
          ? "Nobody put both rounds in order on a locked sheet, so nothing was found out."
          : `${kept} of ${pairs * sheets.length} pairs were put the same way again: that ${luckVerdict(p)} (${shownP(p)}, ${method}).`,
    },
    leftOut,
  };
}

const asMany = (p: number): string => `${plainOdds(p)} would keep as many pairs by luck`;
