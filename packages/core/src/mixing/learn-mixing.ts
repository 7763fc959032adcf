import { repeatableRng } from "../statistics/index.ts";
import { drawLevels } from "./draw-levels.ts";
import { foretold } from "./foretold.ts";
import { EXPONENTS, FEWEST_MIXES, MEAN_BEFOREHAND, MISFITS, ODDS_NEEDED } from "./laws.data.ts";
import { logEvidence } from "./log-evidence.ts";
import { type NotedMixes, placed } from "./noted-mix.ts";

export type MixingLawName = "mean" | "power" | "strongest";

/** How mixes come of their parts, as far as they tell. */
export interface MixingLaw {
  /** What to go by: the mean, unless another law is `ODDS_NEEDED` times as likely. */
  readonly law: MixingLawName;
  /** Of that law, as blending takes it: 1 for the mean, Infinity for the strongest part. */
  readonly exponent: number;
  /** Mixes that were noted. */
  readonly mixes: number;
  /** Log of the density of what was noted under each law, everything unknown averaged over. */
  readonly logEvidence: Readonly<Record<MixingLawName, number>>;
  /** How many times likelier than the mean, what was believed beforehand counted in. */
  readonly odds: Readonly<Record<"power" | "strongest", number>>;
  /** The exponent if the power law holds: the mean of its logarithm, and the middle 80 of 100. */
  readonly power: { readonly exponent: number; readonly low: number; readonly high: number };
  /** What each law foretells of each mix, in the order given, had none been noted; the power law at `power.exponent`. */
  readonly foretold: Readonly<Record<MixingLawName, readonly number[]>>;
}

/** Draws of the parts that everything is averaged over. */
const DRAWS = 1000;
const HUNDREDTH = 100;

const EXPONENT_GRID: readonly number[] = Array.from(
  { length: EXPONENTS.points },
  (_, i) => EXPONENTS.low * (EXPONENTS.high / EXPONENTS.low) ** ((i + 0.5) / EXPONENTS.points),
);

/**
 * Which law noted mixes follow: the mean of their parts, a power law, or the strongest part. Each law's evidence is the density of all
 * that was noted of the mixes, averaged over what the parts may truly be, over how much no law says, and over the exponent; how sure each
 * note is counts. Mixes that share a part are not taken for independent.
 *
 * Method: for each exponent the mixes, as foretold by draws of the parts, are taken to be jointly normal. Accuracy: log evidence within
 * 0.3 of numerical integration where parts are noted to within 1. Deterministic.
 *
 * @param start where chance begins, 0 to 2³² − 1
 * @throws RangeError for levels outside 0 to 10, spreads that are not above 0, parts that were not noted
 * @example learnMixing({ parts: { malt: { mean: 8, sd: 0.7 }, rye: { mean: 0, sd: 0.7 } }, mixes }).law
 */
export function learnMixing(noted: NotedMixes, start = 1): MixingLaw {
  const here = placed(noted);
  const drawn = drawLevels(here.levels, DRAWS, repeatableRng(start));
  const levels = here.mixes.map((mix) => mix.noted);
  const under = (exponent: number) => {
    const told = foretold(exponent, here, drawn);
    const terms = MISFITS.map(({ sd, weight }) => Math.log(weight) + logEvidence(told, levels, sd));
    return { mean: [...told.mean], log: logSum(terms) };
  };
  const mean = under(1);
  const strongest = under(Infinity);
  const bent = EXPONENT_GRID.map((exponent) => ({ exponent, log: under(exponent).log }));
  const logPower = logSum(bent.map(({ log }) => log)) - Math.log(bent.length);
  const weights = bent.map(({ log }) => Math.exp(log - logPower) / bent.length);
  const middle = Math.exp(weights.reduce((sum, w, i) => sum + w * Math.log(EXPONENT_GRID[i]!), 0));
  const exponent = Math.round(HUNDREDTH * middle) / HUNDREDTH;
  const odds = {
    power: Math.exp(logPower - mean.log) / MEAN_BEFOREHAND,
    strongest: Math.exp(strongest.log - mean.log) / MEAN_BEFOREHAND,
  };
  const likelier = odds.strongest > odds.power ? "strongest" : "power";
  const law = levels.length >= FEWEST_MIXES && odds[likelier] >= ODDS_NEEDED ? likelier : "mean";
  return {
    law,
    exponent: law === "mean" ? 1 : law === "power" ? exponent : Infinity,
    mixes: levels.length,
    logEvidence: { mean: mean.log, power: logPower, strongest: strongest.log },
    odds,
    power: { exponent, low: quantile(weights, 0.1), high: quantile(weights, 0.9) },
    foretold: {
      mean: mean.mean,
      power: [...foretold(exponent, here, drawn).mean],
      strongest: strongest.mean,
    },
  };
}

function logSum(logs: readonly number[]): number {
  const most = Math.max(...logs);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
}

/** Of the exponent, to the step of the grid. */
function quantile(weights: readonly number[], share: number): number {
  let sum = 0;
  for (const [i, weight] of weights.entries()) {
    sum += weight;
    if (sum >= share) return Math.round(HUNDREDTH * EXPONENT_GRID[i]!) / HUNDREDTH;
  }
  return EXPONENTS.high;
}
