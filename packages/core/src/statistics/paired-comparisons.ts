import { type MostLikelyWorths, mostLikelyWorths } from "./most-likely-worths.ts";
import type { RankedSet } from "./ranked-set.ts";
import type { NoMaximum } from "./win-graph.ts";

/** Comparisons of two items: `wins[i][j]` times i beat j, `ties[i][j]` = `ties[j][i]` times neither did. */
export interface PairTable {
  readonly wins: readonly (readonly number[])[];
  readonly ties?: readonly (readonly number[])[];
}

/** Comparisons with the order of serving: of the times that `first` came before `second`. */
export interface ServedPair {
  readonly first: number;
  readonly second: number;
  readonly firstWon: number;
  readonly secondWon: number;
  readonly tied: number;
}

function requireTable(what: string, table: readonly (readonly number[])[], items: number): void {
  table.forEach((row, i) =>
    Array.from({ length: Math.max(items, row.length) }, (_, j) => row[j]).forEach((times, j) => {
      if (times === undefined || j >= items || !(times >= 0 && Number.isFinite(times))) {
        throw new RangeError(`${what} requires ${items} counts >= 0 in row ${i}, got ${times} at ${j}`);
      }
    }),
  );
}

const pair = (winner: number, loser: number, times: number, tied = false): RankedSet => ({
  appeals: [[[winner, 1]], [[loser, 1]]],
  sizes: tied ? [2] : [1, 1],
  times,
});

/**
 * The comparisons of a table as the model reads them.
 *
 * @throws RangeError when a row is short, a count is negative, or ties are not symmetric
 */
export function pairSets({ wins, ties }: PairTable): RankedSet[] {
  const items = wins.length;
  requireTable("wins", wins, items);
  if (ties !== undefined) {
    if (ties.length !== items) throw new RangeError(`ties requires ${items} rows, got ${ties.length}`);
    requireTable("ties", ties, items);
  }
  return wins.flatMap((row, i) =>
    row.flatMap((times, j) => {
      if (i === j) return [];
      const tied = ties?.[i]?.[j] ?? 0;
      if (tied !== (ties?.[j]?.[i] ?? 0)) {
        throw new RangeError(
          `ties requires a symmetric table, got ${tied} at ${i}, ${j} and ${ties?.[j]?.[i]} back`,
        );
      }
      return [
        ...(times > 0 ? [pair(i, j, times)] : []),
        ...(i < j && tied > 0 ? [pair(i, j, tied, true)] : []),
      ];
    }),
  );
}

/**
 * Bradley and Terry's worths by maximum likelihood, with Davidson's ties where any occur: P(i beats j) ∝ πᵢ, P(tie) ∝ ν√(πᵢπⱼ).
 *
 * ν is `ties[0].delta`. The diagonal of `wins` is not read.
 *
 * @throws RangeError as `pairSets`
 * @example bradleyTerry({ wins: [[0, 3], [1, 0]] }) // logWorth [0, -1.0986…]
 */
export const bradleyTerry = (table: PairTable): MostLikelyWorths | NoMaximum =>
  mostLikelyWorths(pairSets(table), table.wins.length);

/**
 * The comparisons with their order of serving: parameter `items` is the log of the odds that coming first gives between equals.
 *
 * P(first wins) ∝ √γ·π₁, P(second wins) ∝ π₂/√γ, P(tie) ∝ ν√(π₁π₂). Davidson and Beaver's model (Biometrics 33 (1977) 693, from
 * memory) with their γ as 1/γ and their ν as ν·√γ.
 */
export function servedPairSets(pairs: readonly ServedPair[], items: number): RankedSet[] {
  return pairs.flatMap(({ first, second, firstWon, secondWon, tied }) => {
    for (const count of [firstWon, secondWon, tied]) {
      if (!(count >= 0 && Number.isFinite(count)))
        throw new RangeError(`a served pair requires counts >= 0, got ${count}`);
    }
    for (const item of [first, second]) {
      if (!Number.isInteger(item) || item < 0 || item >= items) {
        throw new RangeError(`a served pair requires items from 0 to ${items - 1}, got ${item}`);
      }
    }
    const [one, two] = [
      [
        [first, 1],
        [items, 0.5],
      ],
      [
        [second, 1],
        [items, -0.5],
      ],
    ] as const;
    return [
      { appeals: [one, two], sizes: [1, 1], times: firstWon },
      { appeals: [two, one], sizes: [1, 1], times: secondWon },
      { appeals: [one, two], sizes: [2], times: tied },
    ].filter(({ times }) => times > 0);
  });
}

/** Bradley and Terry's worths with the effect of coming first (`extra[0]`, natural log of the odds) and Davidson's ties. */
export const bradleyTerryServed = (
  pairs: readonly ServedPair[],
  items: number,
): MostLikelyWorths | NoMaximum => mostLikelyWorths(servedPairSets(pairs, items), items, 1);
