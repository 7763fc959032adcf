import { poolLaws } from "@partsproof/core/statistics";
import type { Finding } from "../../protocol/index.ts";
import { foundRanks } from "./found-ranks.ts";
import { saysOf } from "./can-say.ts";
import { foundAgreement, roundsOf } from "./found-agreement.ts";
import { foundCloseness } from "./found-closeness.ts";
import { foundSets } from "./found-sets.ts";
import { type FoundSheet, foundSheet } from "./found-sheet.ts";
import { headline } from "./headline.ts";
import { headlineOfQuestion } from "./headline-of-question.ts";
import { luckOf } from "./luck.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";
import { alcoholOf, asksOf, designOf, questionOf, shownFlight, type TasterNames } from "../flights/index.ts";

const ORDINALS = "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth".split(
  " ",
);

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

/** What the glasses of a revealed flight said. A pure reckoning: the same rows always give the same finding. */
export function found(
  flight: FlightRow,
  key: FlightKey,
  rows: readonly SheetRow[],
  names: TasterNames,
): Finding {
  const asks = asksOf(questionOf(flight));
  const sheets = rows.map((row) => foundSheet(flight, key, row, names));
  const sets = foundSets(flight, key, rows, names);
  const agreement = foundAgreement(flight, key, rows, names);
  const ranks = foundRanks(sheets);
  const guesses = foundGuesses(sheets);
  const rounds = agreement === null ? [] : roundTable(flight, key, rows);
  const glasses = foundGlasses(flight, key, sheets, agreement === null ? ranks.table : rounds);
  const closeness = questionOf(flight) === "how_close" ? foundCloseness(glasses, sheets) : null;
  const told = { sets: sets?.shown ?? null, closeness, agreement: agreement?.shown ?? null };
  const locked = rows.filter(({ state }) => state === "locked").length;
  const design = designOf(flight);
  return {
    flight: shownFlight(flight, rows, names),
    headline:
      (locked === 0 ? null : headlineOfQuestion(told, design.asked)) ??
      headline({
        locked,
        items: glasses.map(({ label, pour, meanRank, glass }) => ({
          title: pour === "" ? label : `${label} (${pour})`,
          firsts: ranks.table.filter((row) => row[glass] !== null && row[glass] === leastOf(row)).length,
          meanRank: meanRank ?? 0,
        })),
        rankings: ranks.table.length,
        toldApart: ranks.table.some((row) => new Set(row.filter((rank) => rank !== null)).size > 1),
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
    ...told,
    ...saysOf(flight, told.sets, locked),
    designSaid: [...design.said, ...(key.said ?? [])],
    leftOut: [
      ...(asks.guesses ? guesses.leftOut : []),
      ...(!asks.guesses && asks.ranking ? notLocked(sheets) : []),
      ...(asks.ranking ? ranks.leftOut : []),
      ...(sets?.leftOut ?? []),
      ...(agreement?.leftOut ?? []),
    ],
    alcoholPerTaster: alcoholOf(mostEthanol(flight, key)),
  };
}

const leastOf = (row: readonly (number | null)[]): number => Math.min(...row.map((rank) => rank ?? Infinity));

/** As poured for one taster; where tasters had different glasses, for the one who had most. */
function mostEthanol(flight: FlightRow, { glasses, codes }: FlightKey): number {
  // In one row everybody had every glass, and the sum is that of the glasses whatever order they stood in.
  if (flight.design === null) return glasses.reduce((sum, { ethanolG }) => sum + ethanolG, 0);
  const bySheet = Map.groupBy(codes, ({ sheetId }) => sheetId);
  return Math.max(
    ...[...bySheet.values()].map((own) =>
      own.reduce((sum, { glass }) => sum + (glasses[glass]?.ethanolG ?? 0), 0),
    ),
  );
}

/** One row a round that was put in order on a locked sheet: where each glass was put. */
const roundTable = (flight: FlightRow, key: FlightKey, rows: readonly SheetRow[]): (number | null)[][] =>
  rows
    .filter(({ state }) => state === "locked")
    .flatMap((row) => roundsOf(flight, key, row))
    .flatMap((round) => (round ? [key.glasses.map((_, glass) => round.glasses.indexOf(glass) + 1)] : []));

function foundGlasses(
  flight: FlightRow,
  key: FlightKey,
  sheets: readonly FoundSheet[],
  table: readonly (readonly (number | null)[])[],
): Finding["glasses"] {
  const { controlNameId } = designOf(flight);
  const incomplete = table.some((row) => row.includes(null));
  return key.glasses.map((glass, i) => {
    const column = table.flatMap((row) => row[i] ?? []);
    const scores = sheets.flatMap((sheet) => sheet.scores.filter((s) => s.glass === i).map((s) => s.score));
    return {
      glass: i,
      nameId: glass.nameId,
      label: glass.label,
      pour: flight.design?.method ? "" : pourOf(key, i),
      target: glass.nameId === flight.targetNameId,
      control: glass.nameId === controlNameId,
      meanRank: mean(column),
      // Sums over different numbers of sheets say nothing beside each other.
      rankSum: column.length === 0 || incomplete ? null : column.reduce((sum, rank) => sum + rank, 0),
      meanScore: mean(scores),
      codes: sheets.flatMap(({ shown }) =>
        shown.glasses
          .filter((tasted) => tasted.glass === i)
          .map(({ code }) => ({ tasterId: shown.tasterId, code })),
      ),
    };
  });
}

const notLocked = (sheets: readonly FoundSheet[]): string[] =>
  sheets
    .filter(({ shown }) => shown.state !== "locked")
    .map(({ shown }) => `${shown.taster}'s sheet was not locked: its ranking and scores are not counted.`);

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
