export { arrangements } from "./arrangements.ts";
export { binomial } from "./binomial.ts";
export { binomialTail, binomialTailChance } from "./binomial-tail.ts";
export {
  binomialPower,
  type BinomialTest,
  criticalCount,
  trialsForPower,
  trialsNeeded,
} from "./critical-count.ts";
export { poissonBinomialTail } from "./poisson-binomial-tail.ts";
export { chiSquareUpperTail } from "./chi-square-upper-tail.ts";
export { type CountLaw, countLaw } from "./count-law.ts";
export { displacementLaw } from "./displacement-law.ts";
export { factorial } from "./factorial.ts";
export { type Fraction, reduced } from "./fraction.ts";
export {
  EXACT_STEP_LIMIT,
  type Friedman,
  type FriedmanTest,
  friedman,
  type NothingRanked,
} from "./friedman.ts";
export { inversionLaw } from "./inversion-law.ts";
export { type LabelCounts, matchLaw } from "./match-law.ts";
export { midranks } from "./midranks.ts";
export { poolLaws } from "./pool-laws.ts";
export { quotient } from "./quotient.ts";
export { type Rng, rngFromUint32 } from "./rng.ts";
export { shuffled } from "./shuffled.ts";
export { smallestAndStable, type TrialsNeeded } from "./smallest-and-stable.ts";
export { betaQuantile, betaTail, logBeta } from "./beta-law.ts";
export { normalCumulative, normalDensity, normalQuantile } from "./normal-law.ts";
export { fQuantile, fUpperTail, studentHalfWidth, studentTwoSided } from "./student-and-f-laws.ts";
export { atLeast, atMost } from "./binomial-law.ts";
export { exactShare } from "./exact-share.ts";
export { type Interval, type Sides } from "./interval.ts";
export { likelyShare } from "./likely-share.ts";
export { anytimeInterval, anytimeP, logEvidence, type MixtureTest } from "./mixture-test.ts";
export { sequentialRisks, type SequentialRisks, type Verdict } from "./sequential-risks.ts";
export { type WaldLines, waldLines, type WaldTest } from "./wald-test.ts";
export { confusionLaw } from "./confusion-law.ts";
export { type ChanceSaid, chancesTest, type ChancesTest } from "./chances-test.ts";
export { chosenSumTest, type ChosenSumTest, type MarkedGroup } from "./chosen-sum-test.ts";
export { type ExchangeGroup, exchangeTest, type ExchangeTest } from "./exchange-test.ts";
export { holm } from "./holm.ts";
export { knownLaws } from "./known-law.ts";
export { type KnownCount, knownCount, type KnownShare, knownShare, type Labelling } from "./known-share.ts";
export { shrewdToldLaw, toldLaw } from "./told-law.ts";
export { type MostLikelyWorths, mostLikelyWorths } from "./most-likely-worths.ts";
export {
  bradleyTerry,
  bradleyTerryServed,
  pairSets,
  type PairTable,
  type ServedPair,
  servedPairSets,
} from "./paired-comparisons.ts";
export { plackettLuce, rankedSet, type Ranking } from "./plackett-luce.ts";
export { type Appeal, type RankedSet, tieSizes } from "./ranked-set.ts";
export { rankingLogLikelihood } from "./ranking-likelihood.ts";
export { type NoMaximum, splitOf } from "./win-graph.ts";
export { evenChiSquareDraw, evenDraw, fillNormal } from "./draws.ts";
export { type NormalPrior, posteriorDraws, type PosteriorDraws } from "./posterior-draws.ts";
export { repeatableRng } from "./repeatable-rng.ts";
export {
  type BeliefOptions,
  WORTH_PRIOR,
  type WorthBeliefs,
  worthBeliefs,
  type WorthPrior,
} from "./worth-beliefs.ts";
export { JUDGE_SPREADS, type JudgedBeliefs, judgedBeliefs, type JudgedRanking } from "./judged-beliefs.ts";
export { PLACE_EFFECTS, plackettLuceServed, type ServedRanking, servedSet } from "./served-ranking.ts";
export { type Concordance, concordance } from "./kendall-w.ts";
export { page, PAGE_EXACT_ITEMS, type PageTest } from "./page.ts";
export { cochranQ, type CochranTest } from "./cochran.ts";
export { type Distance, distanceTo } from "./distance-to.ts";
export { type Intraclass, intraclass } from "./intraclass.ts";
export { type Ellipse, inEllipse } from "./ellipse.ts";
export { type ItemMap, itemMap } from "./item-map.ts";
export { type Correspondence, correspondence, type CountMap, countMap } from "./correspondence.ts";
export { type MeanEstimate, meanInterval } from "./mean-interval.ts";
export { type NumberTable } from "./number-table.ts";
export { type PrincipalComponents, principalComponents } from "./principal-components.ts";
export { rvCoefficient, type RvTest } from "./rv-coefficient.ts";
export { SIGN_FLIP_EXACT, signFlipTest, type SignFlipTest } from "./sign-flips.ts";
export { brier, type BrierScore, type Forecast } from "./brier.ts";
export { type KendallTau, kendallTau } from "./kendall-tau.ts";
export {
  type MixtureFit,
  mixtureFit,
  mixtureTerms,
  type MixtureModel,
  type MixtureRun,
} from "./mixture-fit.ts";
export { drawnRanking, rankingPower, type RankingPower } from "./ranking-power.ts";
export { type Differing, type WhatDiffers, whatDiffers } from "./what-differs.ts";
export { judgedSets } from "./judged-sets.ts";
export { type JudgedSet, pooledWorths } from "./pooled-worths.ts";
