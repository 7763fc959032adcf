/** How many trials a test needs. */
export interface TrialsNeeded {
  /** The smallest n whose power is 1 - beta or more. A larger n may fall below it again: the power climbs in a saw-tooth. */
  readonly smallest: number;
  /** From this n on the power stays at 1 - beta or more. */
  readonly stable: number;
  /** The critical count at `smallest` and at `stable`. */
  readonly criticalAtSmallest: number;
  readonly criticalAtStable: number;
}

/**
 * The first n that is enough and the one from which on every n looked at is.
 *
 * @param criticalIfEnough asked for 1, 2, 3 … in turn: the critical count at n where n is enough, else null
 * @param limit the most looked at for the first
 * @param lookOn how far is looked on, by the first
 * @returns null when none up to `limit` is enough, or the last one looked at is not
 */
export function smallestAndStable(
  criticalIfEnough: (n: number) => number | null,
  limit: number,
  lookOn: (smallest: number) => number,
): TrialsNeeded | null {
  let smallest: { n: number; critical: number } | undefined;
  let stable: { n: number; critical: number } | undefined;
  for (let n = 1; n <= (smallest === undefined ? limit : lookOn(smallest.n)); n += 1) {
    const critical = criticalIfEnough(n);
    if (critical === null) stable = undefined;
    else {
      smallest ??= { n, critical };
      stable ??= { n, critical };
    }
  }
  if (smallest === undefined || stable === undefined) return null;
  return {
    smallest: smallest.n,
    stable: stable.n,
    criticalAtSmallest: smallest.critical,
    criticalAtStable: stable.critical,
  };
}
