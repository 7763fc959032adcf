/** A trial as it can really be poured: whole steps of the syringe or the scale. */
export interface PouredTrial {
  /** mL of each part. */
  readonly ml: number[];
  readonly totalMl: number;
  /** Shares that come of it, and the most any of them is off. */
  readonly shares: number[];
  readonly off: number;
}

export interface PourLimits {
  /** What the glass needs; never less is poured. */
  readonly leastMl: number;
  readonly mostMl: number;
  /** Smallest step of each part, mL; a scale's step is not the same volume of everything. */
  readonly stepMl: readonly number[];
  /** How far a share may be off. */
  readonly within: number;
}

/**
 * The least that can be poured so that every share comes out within `within`, in whole steps; where no amount up to `mostMl` does, the
 * one that is least off.
 *
 * Accuracy: every total between is looked at, in steps of the smallest; parts are rounded to the nearest whole step.
 *
 * @throws RangeError unless 0 < leastMl <= mostMl and every step is above 0
 */
export function pourInSteps(shares: readonly number[], limits: PourLimits): PouredTrial {
  const { leastMl, mostMl, stepMl, within } = limits;
  if (!(leastMl > 0 && leastMl <= mostMl))
    throw new RangeError(`a trial requires 0 < least <= most, got ${leastMl} to ${mostMl} mL`);
  if (!stepMl.every((step) => step > 0))
    throw new RangeError(`a step requires more than 0 mL, got ${stepMl.join(", ")} mL`);
  const used = stepMl.filter((_, i) => (shares[i] as number) > 0);
  const step = Math.min(...used);
  let closest: PouredTrial | null = null;
  for (let n = 0; leastMl + n * step <= mostMl + step; n += 1) {
    const made = rounded(shares, leastMl + n * step, stepMl);
    if (made.totalMl < leastMl - 1e-9 || made.totalMl > mostMl + 1e-9) continue;
    if (made.off <= within + 1e-12) return made;
    if (closest === null || made.off < closest.off - 1e-12) closest = made;
  }
  return closest ?? rounded(shares, mostMl, stepMl);
}

function rounded(shares: readonly number[], totalMl: number, stepMl: readonly number[]): PouredTrial {
  const ml = shares.map((share, i) => {
    const step = stepMl[i] as number;
    // A part that is asked for is poured, however small.
    const steps = Math.max(share > 0 ? 1 : 0, Math.round((share * totalMl) / step));
    return Number((steps * step).toPrecision(12));
  });
  const sum = ml.reduce((total, part) => total + part, 0);
  const real = ml.map((part) => part / sum);
  return {
    ml,
    totalMl: sum,
    shares: real,
    off: Math.max(...real.map((share, i) => Math.abs(share - (shares[i] as number)))),
  };
}
