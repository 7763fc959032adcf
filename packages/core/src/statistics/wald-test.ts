/** What Wald's test is set up to decide between. */
export interface WaldTest {
  readonly p0: number;
  /** Above p0. */
  readonly p1: number;
  /** Nominal risk of deciding for p1 when p0 is true. */
  readonly alpha: number;
  /** Nominal risk of deciding for p0 when p1 is true. */
  readonly beta: number;
}

/** Decided for p1 at `upper` successes or more, for p0 at `lower` or fewer; a count outside 0 to n is out of reach. */
export interface WaldLines {
  readonly upper: number;
  readonly lower: number;
}

/**
 * The counts at which Wald's sequential probability ratio test of a chance stops after n trials.
 *
 * Stops when ln(likelihood ratio) >= ln((1 − beta)/alpha) or <= ln(beta/(1 − alpha)). Wald's limits make alpha + beta hold together
 * at most the nominal sum, and each one at most alpha/(1 − beta), beta/(1 − alpha); `sequentialRisks` gives the true ones.
 *
 * Source: Wald, Sequential Analysis, 1947, 3.2 and 5.3 (from memory).
 *
 * @throws RangeError unless 0 < p0 < p1 < 1 and the risks are above 0 with a sum below 1
 * @example waldLines({ p0: 1 / 3, p1: 2 / 3, alpha: 0.05, beta: 0.1 }, 10)
 */
export function waldLines({ p0, p1, alpha, beta }: WaldTest, n: number): WaldLines {
  if (!(p0 > 0 && p0 < p1 && p1 < 1))
    throw new RangeError(`waldLines requires 0 < p0 < p1 < 1, got ${p0} and ${p1}`);
  if (!(alpha > 0 && beta > 0 && alpha + beta < 1)) {
    throw new RangeError(`waldLines requires risks above 0 with a sum below 1, got ${alpha} and ${beta}`);
  }
  const miss = Math.log((1 - p1) / (1 - p0));
  const gain = Math.log(p1 / p0) - miss;
  const at = (bar: number): number => (bar - n * miss) / gain;
  // A count that lies on the line to within rounding has reached it.
  return {
    upper: Math.ceil(at(Math.log((1 - beta) / alpha)) - 1e-9),
    lower: Math.floor(at(Math.log(beta / (1 - alpha))) + 1e-9),
  };
}
