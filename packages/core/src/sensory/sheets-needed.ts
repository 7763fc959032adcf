import { type CountLaw, poolLaws, smallestAndStable, type TrialsNeeded } from "../statistics/index.ts";

/** The smallest count that can come up and that luck reaches or passes with a probability of at most alpha, or null. */
export function criticalOf(law: CountLaw, alpha: number): number | null {
  const k = law.exactly.findIndex((cases, count) => cases > 0n && law.pAtLeast(count) <= alpha);
  return k < 0 ? null : k;
}

/**
 * How many sheets it takes, when each sheet gives a count of successes by one law under luck and by another with skill, until
 * their sum passes the critical count with a probability of 1 − beta. Exact: laws are pooled, not approximated.
 *
 * @param limit the most sheets looked at; `stable` looks on to twice the smallest number and 5 more
 * @returns null when `limit` sheets are not enough
 */
export function sheetsNeeded(ask: {
  readonly luck: CountLaw;
  readonly skill: CountLaw;
  readonly alpha: number;
  readonly beta: number;
  readonly limit?: number;
}): TrialsNeeded | null {
  const { luck, skill, alpha, beta, limit = 30 } = ask;
  let [lucky, skilled] = [poolLaws([]), poolLaws([])];
  return smallestAndStable(
    () => {
      lucky = poolLaws([lucky, luck]);
      skilled = poolLaws([skilled, skill]);
      const critical = criticalOf(lucky, alpha);
      return critical !== null && skilled.pAtLeast(critical) >= 1 - beta ? critical : null;
    },
    limit,
    (smallest) => 2 * smallest + 5,
  );
}
