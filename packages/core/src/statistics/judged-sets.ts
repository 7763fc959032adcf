import type { JudgedRanking } from "./judged-beliefs.ts";
import { rankedSet } from "./plackett-luce.ts";
import type { JudgedSet } from "./pooled-worths.ts";
import { servedSet } from "./served-ranking.ts";

/** Judges' rankings as `pooledWorths` reads them; where all are served, with the effect of the first and the last place. */
export const judgedSets = (rankings: readonly JudgedRanking[], items: number): JudgedSet[] =>
  rankings.map(({ judge, ranking, served }) => ({
    judge,
    set: served === undefined ? rankedSet(ranking, items) : servedSet({ ranking, served }, items),
  }));
