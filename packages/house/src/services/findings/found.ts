import { poolLaws } from "@partsproof/core/statistics";
import type { Finding } from "../../protocol/index.ts";
import { foundRanks } from "./found-ranks.ts";
import { type FoundSheet, foundSheet } from "./found-sheet.ts";
import { headline } from "./headline.ts";
import { luckOf } from "./luck.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";
import { alcoholOf, shownFlight, type TasterNames } from "../flights/index.ts";

const ORDINALS = "first second third fourth fifth sixth seventh eighth ninth tenth".split(" ");

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

/** What the glasses of a revealed flight said. A pure reckoning: the same rows always give the same finding. */
export function found(
  flight: FlightRow,
  key: FlightKey,
  rows: readonly SheetRow[],
  names: TasterNames,
): Finding {
  const sheets = rows.map((row) => foundSheet(flight, key, row, names));
  const ranks = foundRanks(sheets);
  const guesses = foundGuesses(sheets);
  const glasses = key.glasses.map((glass, i) => {
    const column = ranks.table.map((row) => row[i] ?? 0);
    const scores = sheets.flatMap((sheet) => sheet.scores.filter((s) => s.glass === i).map((s) => s.score));
    return {
      glass: i,
      nameId: glass.nameId,
      label: glass.label,
      pour: pourOf(key, i),
      target: glass.nameId === flight.targetNameId,
      control: false,
      meanRank: mean(column),
      rankSum: column.length === 0 ? null : column.reduce((sum, rank) => sum + rank, 0),
      meanScore: mean(scores),
      codes: sheets.flatMap(({ shown }) =>
        shown.glasses
          .filter((tasted) => tasted.glass === i)
          .map(({ code }) => ({ tasterId: shown.tasterId, code })),
      ),
    };
  });
  return {
    flight: shownFlight(flight, rows, names),
    headline: headline({
      locked: sheets.filter(({ shown }) => shown.state === "locked").length,
      items: glasses.map(({ label, pour, meanRank, glass }) => ({
        title: pour === "" ? label : `${label} (${pour})`,
        firsts: ranks.table.filter((row) => row[glass] === Math.min(...row)).length,
        meanRank: meanRank ?? 0,
      })),
      rankings: ranks.table.length,
      toldApart: ranks.table.some((row) => row.some((rank) => rank !== row[0])),
      rankP: ranks.test?.ok ? ranks.test.p : null,
      right: guesses.pooled?.right ?? 0,
      guessed: guesses.pooled?.guessed ?? 0,
      pooledP: guesses.pooled?.luck.p ?? null,
      leastSheetP: guesses.leastP,
    }),
    namesOnOffer: flight.namesOnOffer.map((name) => ({ ...name })),
    glasses,
    sheets: sheets.map(({ shown }) => shown),
    pooledGuesses: guesses.pooled,
    ranks: ranks.shown,
    sets: null,
    closeness: null,
    agreement: null,
    canSay: [],
    cannotSay: [],
    designSaid: [],
    leftOut: [...guesses.leftOut, ...ranks.leftOut],
    alcoholPerTaster: alcoholOf(key.glasses.reduce((sum, { ethanolG }) => sum + ethanolG, 0)),
  };
}

/** "first pour", "second pour" by glass number where a name was poured more than once, else "". */
function pourOf(key: FlightKey, glass: number): string {
  const nameId = key.glasses[glass]?.nameId;
  if (key.glasses.filter((other) => other.nameId === nameId).length === 1) return "";
  const before = key.glasses.slice(0, glass).filter((other) => other.nameId === nameId).length;
  return `${ORDINALS[before]} pour`;
}

function foundGuesses(sheets: readonly FoundSheet[]): {
  readonly pooled: Finding["pooledGuesses"];
  readonly leastP: number | null;
  readonly leftOut: readonly string[];
} {
  const identified = sheets.flatMap((sheet) => sheet.identified ?? []);
  const leftOut = sheets.flatMap(({ shown: { state, taster, guessed, glasses } }) => {
    if (state !== "locked") {
      return [`${taster}'s sheet was not locked: its guesses, ranking and scores are not counted.`];
    }
    if (guessed === 0) return [`${taster} named no glass and is left out of the guesses.`];
    if (guessed < glasses.length) {
      return [`${taster} named ${guessed} of ${glasses.length} glasses; the others are left out.`];
    }
    return [];
  });
  if (identified.length === 0) return { pooled: null, leastP: null, leftOut };
  const guessed = identified.reduce((sum, each) => sum + each.guessed, 0);
  const right = identified.reduce((sum, each) => sum + each.right, 0);
  const method =
    identified.length === 1
      ? "exact, the one sheet with guesses"
      : `exact, ${identified.length} sheets taken as independent: true if nobody compared guesses`;
  const luck = luckOf(poolLaws(identified.map(({ law }) => law)), right, method);
  const leastP = Math.min(...identified.map(({ pAtLeast }) => pAtLeast));
  return { pooled: { guessed, right, luck }, leastP, leftOut };
}
