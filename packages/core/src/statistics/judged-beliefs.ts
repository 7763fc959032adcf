import { rankedSet, type Ranking } from "./plackett-luce.ts";
import { posteriorDraws, type PosteriorDraws } from "./posterior-draws.ts";
import { type Appeal, type RankedSet, tieSizes } from "./ranked-set.ts";
import { rankingLogLikelihood } from "./ranking-likelihood.ts";
import { PLACE_EFFECTS, servedSet } from "./served-ranking.ts";
import { beliefsFrom, type BeliefOptions, WORTH_PRIOR, type WorthBeliefs } from "./worth-beliefs.ts";

/** A ranking with who made it, by number; `served` where the order of serving is to count. */
export interface JudgedRanking {
  readonly judge: number;
  readonly ranking: Ranking;
  readonly served?: readonly number[];
}

/** How far judges may differ in their log worths (a standard deviation for each item), each thought equally likely beforehand. */
export const JUDGE_SPREADS: readonly number[] = [0, 0.5, 1, 2];

export interface JudgedBeliefs {
  /** Of the worths common to all judges: what another judge of their kind is to be expected to find. */
  readonly common: WorthBeliefs;
  /** How far judges differ, with the probability of each possibility. */
  readonly spread: readonly { readonly sd: number; readonly probability: number }[];
  /** `judges[j]`: each item's expected log worth for judge j, less the mean of them. */
  readonly judges: readonly (readonly number[])[];
}

function withJudge(set: RankedSet, from: number): RankedSet {
  const own = (appeal: Appeal): Appeal => {
    const item = appeal[0]?.[0] ?? 0;
    return [...appeal, [from + item, 1]];
  };
  return { ...set, appeals: set.appeals.map(own) };
}

interface Part {
  readonly posterior: PosteriorDraws;
  readonly size: number;
}

/** Several posteriors of the same parameters, each as likely as its evidence says. */
function mixed(parts: readonly Part[]): {
  together: PosteriorDraws;
  probability: number[];
} {
  const top = Math.max(...parts.map(({ posterior }) => posterior.logEvidence));
  const evidence = parts.map(({ posterior }) => Math.exp(posterior.logEvidence - top));
  const all = evidence.reduce((sum, e) => sum + e, 0);
  const probability = evidence.map((e) => e / all);
  const size = Math.max(...parts.map((part) => part.size));
  const count = parts.reduce((sum, { posterior }) => sum + posterior.weights.length, 0);
  const draws = new Float64Array(count * size);
  const weights = new Float64Array(count);
  let at = 0;
  parts.forEach(({ posterior }, i) =>
    posterior.weights.forEach((w, d) => {
      draws.set(posterior.draws.subarray(d * posterior.size, (d + 1) * posterior.size), at * size);
      weights[at] = w * (probability[i] as number);
      at += 1;
    }),
  );
  const effective = 1 / weights.reduce((sum, w) => sum + w * w, 0);
  return {
    together: { size, draws, weights, effective, logEvidence: top + Math.log(all / parts.length) },
    probability,
  };
}

/**
 * What rankings by several judges, some perhaps more than once, say about the worths: a judge's rankings hang together, and the
 * certainty grows with the judges, not with the sheets of one of them.
 *
 * Model: judge j's log worth of item i is θᵢ + δᵢⱼ, θ normal with the sd of the prior, δ normal with one sd out of `JUDGE_SPREADS`,
 * averaged over by their evidence. Otherwise as `worthBeliefs`; `level` intervals are calibrated over that prior.
 *
 * @throws RangeError when there is no ranking or a judge is not a whole number from 0
 * @example judgedBeliefs([{ judge: 0, ranking: [[0], [1]] }], 2, { rng: repeatableRng(6) })
 */
export function judgedBeliefs(
  rankings: readonly JudgedRanking[],
  items: number,
  { rng, prior = WORTH_PRIOR, level = 0.95, draws = 16_000, ties }: Omit<BeliefOptions, "extras">,
): JudgedBeliefs {
  const bad = rankings.find(({ judge }) => !Number.isInteger(judge) || judge < 0);
  if (bad !== undefined) throw new RangeError(`judgedBeliefs requires judges from 0 up, got ${bad.judge}`);
  if (rankings.length === 0) throw new RangeError("judgedBeliefs requires at least 1 ranking, got 0");
  const judges = Math.max(...rankings.map(({ judge }) => judge)) + 1;
  const extras = rankings.some(({ served }) => served !== undefined) ? PLACE_EFFECTS : 0;
  const plain = rankings.map(({ ranking, served }) =>
    served === undefined ? rankedSet(ranking, items) : servedSet({ ranking, served }, items),
  );
  const sizes = ties ?? tieSizes(plain);
  const repeat = (times: number, x: number): number[] => Array.from({ length: times }, () => x);
  const shared = items + extras;
  const drawnAt = (sd: number, count: number): Part => {
    const own = sd === 0 ? 0 : judges * items;
    const sets =
      sd === 0 ? plain : plain.map((set, i) => withJudge(set, shared + (rankings[i]?.judge ?? 0) * items));
    const posterior = posteriorDraws(
      rankingLogLikelihood(sets, shared + own, sizes),
      {
        mean: [...repeat(shared + own, 0), ...repeat(sizes.length, prior.tieMean)],
        sd: [
          ...repeat(items, prior.worthSd),
          ...repeat(extras, prior.extraSd),
          ...repeat(own, sd),
          ...repeat(sizes.length, prior.tieSd),
        ],
      },
      rng,
      count,
    );
    return { posterior: withoutTies(posterior, shared + own), size: shared + own };
  };
  // A first look at how likely each spread is says where the draws are wanted.
  const looked = mixed(JUDGE_SPREADS.map((sd) => drawnAt(sd, Math.ceil(draws / 16)))).probability;
  const parts = JUDGE_SPREADS.map((sd, i) =>
    drawnAt(sd, Math.ceil(draws * Math.max(1 / 16, looked[i] ?? 0))),
  );
  const { together, probability } = mixed(parts);
  const { size, weights } = together;
  const expected = new Float64Array(size);
  weights.forEach((w, d) => {
    for (let i = 0; i < size; i += 1)
      expected[i] = (expected[i] as number) + w * (together.draws[d * size + i] as number);
  });
  return {
    common: beliefsFrom(together, items, extras, level),
    spread: JUDGE_SPREADS.map((sd, i) => ({ sd, probability: probability[i] as number })),
    judges: Array.from({ length: judges }, (_, judge) => {
      const worths = Array.from(
        { length: items },
        (__, i) => (expected[i] as number) + (expected[shared + judge * items + i] as number),
      );
      const middle = worths.reduce((sum, x) => sum + x, 0) / items;
      return worths.map((x) => x - middle);
    }),
  };
}

/** The draws without the tie parameters, which come last. */
function withoutTies(posterior: PosteriorDraws, size: number): PosteriorDraws {
  if (posterior.size === size) return posterior;
  const draws = new Float64Array(posterior.weights.length * size);
  posterior.weights.forEach((_, d) =>
    draws.set(posterior.draws.subarray(d * posterior.size, d * posterior.size + size), d * size),
  );
  return { ...posterior, size, draws };
}
