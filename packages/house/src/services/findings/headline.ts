import { HARD_TO_PUT_DOWN_TO_LUCK, luckVerdict } from "@partsproof/core/sensory";

/** What the headline is made from; everything counted over locked sheets only. */
export interface Said {
  readonly locked: number;
  /** One an item: its title, on how many sheets it was first (alone or level), its mean rank. */
  readonly items: readonly { readonly title: string; readonly firsts: number; readonly meanRank: number }[];
  /** Sheets with a ranking. */
  readonly rankings: number;
  /** Whether any ranking tells any two glasses apart. */
  readonly toldApart: boolean;
  /** P of Friedman's test; null where none could be made. */
  readonly rankP: number | null;
  readonly right: number;
  readonly guessed: number;
  /** P(as many right or more) over all sheets; null where nothing was guessed. */
  readonly pooledP: number | null;
  /** The same for the luckiest single sheet. */
  readonly leastSheetP: number | null;
}

/**
 * Says the finding in one line, and how much of it could be luck.
 *
 * Rule. First the ranks: the glass with the best mean rank and on how many sheets it was first; two that share
 * the best mean rank are both named, more are counted; one ranking alone is said to be one. Then whether the
 * rankings agree more than luck would (Friedman's p: below 0.01 "very hard to put down to luck", below 0.05
 * "hard", below 0.2 "does not rule luck out", else "could well be luck"). Then the guesses: how many right of how
 * many, and luck by the same thresholds; "is not shown" only where neither the sheets together nor any one of them
 * was below 0.05. That a difference was not shown is never said to mean that there is none.
 */
export function headline(said: Said): string {
  if (said.locked === 0) return "No sheet was locked, so the glasses said nothing";
  const clauses = [...rankClauses(said), ...guessClauses(said)];
  if (clauses.length === 0) return "Nobody ranked or named a glass";
  const line = clauses.join("; ");
  return line.charAt(0).toUpperCase() + line.slice(1);
}

function rankClauses({ items, rankings, toldApart, rankP }: Said): string[] {
  if (rankings === 0) return [];
  if (!toldApart) return ["nobody ranked any glass above another"];
  const best = Math.min(...items.map(({ meanRank }) => meanRank));
  const leaders = items.filter(({ meanRank }) => meanRank === best);
  const [first, second] = leaders;
  if (!first) return [];
  if (rankings === 1) {
    const names =
      leaders.length > 2 ? `${leaders.length} glasses` : leaders.map((i) => i.title).join(" and ");
    return [`${names} ranked first${leaders.length > 1 ? ", level," : ""} in the one ranking there is`];
  }
  const agreement = rankP === null ? [] : [`that the sheets agree on an order at all ${luckVerdict(rankP)}`];
  const shown = Number(best.toFixed(2));
  if (second && leaders.length > 2) {
    return [`no glass stood out: ${leaders.length} share the best mean rank, ${shown}`, ...agreement];
  }
  if (second) return [`${first.title} and ${second.title} share the best mean rank, ${shown}`, ...agreement];
  const most = Math.max(...items.map(({ firsts }) => firsts));
  const won =
    first.firsts === most && most > 0
      ? `${first.title} ranked first in ${first.firsts} of ${rankings} sheets`
      : `${first.title} had the best mean rank, ${shown}, and was first in ${first.firsts} of ${rankings} sheets`;
  return [won, ...agreement];
}

function guessClauses({ right, guessed, pooledP, leastSheetP }: Said): string[] {
  if (guessed === 0 || pooledP === null) return [];
  const count = `${right} of ${guessed} ${guessed === 1 ? "guess" : "guesses"} right`;
  if (pooledP < HARD_TO_PUT_DOWN_TO_LUCK) return [`${count}, which ${luckVerdict(pooledP)}`];
  if (leastSheetP !== null && leastSheetP < HARD_TO_PUT_DOWN_TO_LUCK) {
    return [
      `${count}, which all together ${luckVerdict(pooledP)}, though one sheet alone is hard to put down to it`,
    ];
  }
  return [
    `whether anybody could tell the names is not shown: ${count}${right > 0 ? `, which ${luckVerdict(pooledP)}` : ""}`,
  ];
}
