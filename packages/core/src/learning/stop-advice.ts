import { TASTED } from "./prior.data.ts";

export interface StopAdvice {
  readonly advised: boolean;
  readonly why: string;
}

/** So few rankings and sheets of marks are never enough to stop. */
const FEWEST = 2;

/**
 * Whether another flight is worth it: not where the best of it is expected to be better than the anchor by less than can be tasted
 * (`TASTED`), however sure one would be afterwards.
 *
 * @param gain expected log worth of the best of the flight, less the anchor's
 * @param sheets rankings and sheets of marks
 * @param others glasses besides anchor and target
 * @param scarce whether too little is left for some
 * @example stopAdvice(0.1, 6, 4, false).advised // true
 */
export function stopAdvice(gain: number, sheets: number, others: number, scarce: boolean): StopAdvice {
  const first = 100 / (1 + Math.exp(-gain));
  const told = `The best of the next flight is expected to be put before the best so far in ${first.toFixed(0)} of 100 comparisons at most`;
  if (others === 0)
    return {
      advised: true,
      why: `There is no other recipe to try within these parts${scarce ? " and what is left" : ""}.`,
    };
  if (sheets < FEWEST)
    return {
      advised: false,
      why: `Only ${sheets === 1 ? "one ranking or sheet of marks" : "no ranking and no marks"} so far: too few to say that nothing better is left.`,
    };
  const need = 100 / (1 + Math.exp(-TASTED));
  return gain < TASTED
    ? { advised: true, why: `${told}; below ${need.toFixed(0)} a difference is hardly tasted.` }
    : { advised: false, why: `${told}; from ${need.toFixed(0)} on a difference can be tasted.` };
}
