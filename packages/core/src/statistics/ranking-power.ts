import { evenDraw } from "./draws.ts";
import { friedman } from "./friedman.ts";
import type { Interval } from "./interval.ts";
import { exactShare } from "./exact-share.ts";
import type { Rng } from "./rng.ts";

export interface RankingPower {
  /** Share of simulated tables in which Friedman's test found the rankings to agree. */
  readonly power: number;
  /** 95 % exact interval of that share: what drawing so many tables leaves open. */
  readonly interval: Interval;
  /** Share in which the best item came out first in the rank sums, ties shared out. */
  readonly bestFirst: number;
  readonly tables: number;
}

/** One ranking by Plackett and Luce's model: Gumbel noise on the log worths. Ranks, 1 the best, in the order of the items. */
export function drawnRanking(logWorth: readonly number[], rng: Rng): number[] {
  const scores = logWorth.map((worth) => worth - Math.log(-Math.log(evenDraw(rng))));
  return scores.map((score) => 1 + scores.filter((other) => other > score).length);
}

/**
 * Whether Friedman's test finds a table at `alpha`, for tables of one size without ties: p falls as the statistic rises, so what is
 * known of others settles most, and the exact law is worked out for few.
 */
function significance(alpha: number): (statistic: number, table: readonly (readonly number[])[]) => boolean {
  let [least, most] = [Infinity, -Infinity];
  return (statistic, table) => {
    if (statistic >= least) return true;
    if (statistic <= most) return false;
    const test = friedman(table);
    const found = test.ok && test.p <= alpha;
    if (found) least = statistic;
    else most = statistic;
    return found;
  };
}

/**
 * What so many rankings could show, before any is made: the chance that Friedman's test finds agreement at `alpha` if the items' log
 * worths were these, by simulation of whole tables.
 *
 * Deterministic for a given `rng`. The interval is about the drawing only: the worths are the caller's guess.
 *
 * @param tables how many to draw; 400 leave about 5 % open
 * @throws RangeError unless judges and tables are whole and 1 or more, with 2 items or more
 * @example rankingPower({ logWorth: [1, 0, 0, 0], judges: 6, alpha: 0.05 }, repeatableRng(6))
 */
export function rankingPower(
  {
    logWorth,
    judges,
    alpha,
  }: { readonly logWorth: readonly number[]; readonly judges: number; readonly alpha: number },
  rng: Rng,
  tables = 400,
): RankingPower {
  for (const [what, count] of [
    ["judges", judges],
    ["tables", tables],
  ] as const) {
    if (!Number.isInteger(count) || count < 1)
      throw new RangeError(`rankingPower requires 1 or more ${what}, got ${count}`);
  }
  if (logWorth.length < 2)
    throw new RangeError(`rankingPower requires 2 items or more, got ${logWorth.length}`);
  if (!(alpha > 0 && alpha < 1))
    throw new RangeError(`rankingPower requires a risk between 0 and 1, got ${alpha}`);
  const best = logWorth.indexOf(Math.max(...logWorth));
  const significant = significance(alpha);
  let [found, first] = [0, 0];
  for (let i = 0; i < tables; i += 1) {
    const table = Array.from({ length: judges }, () => drawnRanking(logWorth, rng));
    const test = friedman(table, { exactStepLimit: 0 });
    if (test.ok && significant(test.statistic, table)) found += 1;
    const least = Math.min(...test.rankSums);
    if (test.rankSums[best] === least) first += 1 / test.rankSums.filter((sum) => sum === least).length;
  }
  return {
    power: found / tables,
    interval: exactShare(found, tables, 0.95, "both"),
    bestFirst: first / tables,
    tables,
  };
}
