export { arrangements } from "./arrangements.ts";
export { binomial } from "./binomial.ts";
export { binomialTail } from "./binomial-tail.ts";
export {
  binomialPower,
  type BinomialTest,
  criticalCount,
  trialsNeeded,
} from "./critical-count.ts";
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
