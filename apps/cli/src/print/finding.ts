import type { Finding, FindingLine } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { day, plural } from "./figures.ts";
import { alcohol, ranking } from "./flight.ts";
import { chance, printAgreement, printCloseness, printSets } from "./found.ts";

export const printFindings = (lines: readonly FindingLine[]): string =>
  columns(
    lines,
    [
      { head: "Revealed", cell: ({ revealedAt }) => day(revealedAt) },
      { head: "Flight", cell: ({ name }) => name },
      { head: "Tasters", cell: ({ tasters }) => String(tasters), right: true },
      { head: "Glasses", cell: ({ glasses }) => String(glasses), right: true },
      { head: "Finding", cell: ({ headline }) => headline },
      { head: "Id", cell: ({ flightId }) => flightId },
    ],
    "No flight was revealed yet.",
  );

export function printFinding(finding: Finding): string {
  const { sets, closeness, agreement } = finding;
  const ranked = columns(
    finding.glasses,
    [
      { head: "Glass", cell: ({ label, pour }) => (pour === "" ? label : `${label}, ${pour}`) },
      { head: "", cell: ({ target, control }) => (target ? "target" : control ? "control" : "") },
      { head: "Mean rank", cell: ({ meanRank }) => figure(meanRank, 2), right: true },
      { head: "Rank sum", cell: ({ rankSum }) => figure(rankSum, 1), right: true },
      { head: "Mean score", cell: ({ meanScore }) => figure(meanScore, 1), right: true },
    ],
    "",
  );
  const { ranks, pooledGuesses } = finding;
  const together = facts([
    ["Ranks", ranks === null ? null : `${ranks.sentence}\n${chance(ranks.chance)}`],
    [
      "Friedman",
      ranks === null
        ? null
        : `${ranks.statistic.toFixed(3)} with ${ranks.df} degrees of freedom over ${plural(ranks.sheetsCounted, "sheet")}; Kendall's W ${ranks.kendallW.toFixed(3)}`,
    ],
    [
      "Guesses",
      pooledGuesses === null
        ? null
        : `${pooledGuesses.right} of ${pooledGuesses.guessed} right on all sheets: ${chance(pooledGuesses.luck)}`,
    ],
    ["Left out", finding.leftOut.length === 0 ? null : finding.leftOut.join("\n")],
    ["It can say", finding.canSay.join("\n")],
    ["It cannot", finding.cannotSay.join("\n")],
    ["The layout", finding.designSaid.length === 0 ? null : finding.designSaid.join("\n")],
    ["In the glasses", alcohol(finding.alcoholPerTaster)],
  ]);
  const own = [
    ...(sets === null ? [] : [printSets(sets)]),
    ...(closeness === null ? [] : [printCloseness(closeness)]),
    ...(agreement === null ? [] : [printAgreement(agreement)]),
  ];
  // Of two to tell apart nothing is ranked, and set by set is said already what stood where.
  const sheets = sets === null && agreement === null ? finding.sheets.map(printRevealed) : [];
  return [finding.headline, ...(sets === null ? [ranked] : []), ...sheets, ...own, together].join("\n\n");
}

function printRevealed(sheet: Finding["sheets"][number]): string {
  const glasses = columns(
    sheet.glasses,
    [
      { head: sheet.taster, cell: ({ position }) => String(position), right: true },
      { head: "Code", cell: ({ code }) => code, right: true },
      { head: "Was", cell: ({ label }) => label },
      {
        head: "Guessed",
        cell: ({ guessLabel, sure }) => (guessLabel ?? "-") + (sure === null ? "" : `, ${sure} % sure`),
      },
      { head: "", cell: ({ right }) => (right === null ? "" : right ? "right" : "wrong") },
      { head: "Rank", cell: ({ rank }) => figure(rank, 1), right: true },
    ],
    "",
  );
  const luck = sheet.luck === null ? "" : `: ${chance(sheet.luck)}`;
  const lines = [glasses];
  if (sheet.guessed > 0) lines.push(`${sheet.right} of ${sheet.guessed} right${luck}`);
  if (sheet.state !== "locked") lines.push(`This sheet was not locked (${sheet.state}).`);
  else if (sheet.ranking !== null) lines.push(`Ranking: ${ranking(sheet.ranking)}`);
  return lines.join("\n");
}

const figure = (value: number | null, decimals: number): string =>
  value === null ? "-" : value.toFixed(decimals);
