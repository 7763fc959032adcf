import { rankingWords } from "@partsproof/core/sensory";
import { type Friedman, friedman } from "@partsproof/core/statistics";
import type { Finding } from "../../protocol/index.ts";
import type { FoundSheet } from "./found-sheet.ts";
import { rankLuckOf } from "./luck.ts";

export interface FoundRanks {
  /** One row a sheet with a ranking, one column a glass. */
  readonly table: readonly (readonly (number | null)[])[];
  readonly test: Friedman | null;
  readonly shown: Finding["ranks"];
  readonly leftOut: readonly string[];
}

/** What the rankings say together. A test takes two of them; who gave none is named. */
export function foundRanks(sheets: readonly FoundSheet[]): FoundRanks {
  const table = sheets.flatMap(({ ranks }) => (ranks === null ? [] : [ranks]));
  const unranked = sheets.filter(({ shown, ranks }) => shown.state === "locked" && ranks === null);
  const leftOut = unranked.map(({ shown }) => `${shown.taster} ranked nothing and is left out of the ranks.`);
  if (table.length < 2) {
    const why =
      table.length === 0
        ? "No locked sheet has a ranking, so there is no test of the ranks."
        : "Only one locked sheet has a ranking: it has nothing to agree with, so there is no test of the ranks.";
    return { table, test: null, shown: null, leftOut: [...leftOut, why] };
  }
  const whole = table.flatMap((row) => (row.includes(null) ? [] : [row.map((rank) => rank ?? 0)]));
  if (whole.length < table.length) {
    const why =
      "Each taster had only some of the glasses, so each glass is ranked beside others: mean ranks are shown, and there is no test of the ranks.";
    return { table, test: null, shown: null, leftOut: [...leftOut, why] };
  }
  const test = friedman(whole);
  if (!test.ok) return { table, test, shown: null, leftOut: [...leftOut, rankingWords(test)] };
  const shown = {
    sheetsCounted: test.judges,
    statistic: test.statistic,
    df: test.df,
    kendallW: test.kendallW,
    chance: rankLuckOf(test),
    sentence: rankingWords(test),
  };
  return { table, test, shown, leftOut };
}
