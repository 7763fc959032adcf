/** Smallest pour that is still nosed and tasted twice, mL. Common practice, no source. */
export const SMALLEST_POUR_ML = 5;

/** One whiskey of a flight: what is left of it to use, and how many glasses of it are poured. */
export interface Stock {
  readonly name: string;
  /** Millilitres at 20 °C that may be used. */
  readonly leftMl: number;
  readonly glasses: number;
}

export type PourSize =
  | {
      readonly ok: true;
      readonly pourMl: number;
      /** The whiskey that keeps the pour below what was wanted, null when none does. */
      readonly limitedBy: string | null;
    }
  | {
      readonly ok: false;
      readonly issue: {
        readonly code: "too_little_left";
        /** Millilitres needed for the smallest pour. */
        readonly limit: number;
        readonly received: number;
        readonly message: string;
      };
      readonly name: string;
    };

/** Whole steps in an amount: 0.3 mL holds three steps of 0.1, though the doubles say a hair less. */
export const wholeSteps = (amount: number, step: number): number => Math.floor(amount / step + 1e-9);

function requireAbove(what: string, unit: string, x: number, low: number): void {
  if (!(x > low && x < Infinity))
    throw new RangeError(`${what} requires more than ${low} ${unit}, got ${x} ${unit}`);
}

/**
 * The largest equal pour, no larger than wanted, that what is left of every whiskey allows. All glasses get the same, or the
 * level in the glass would tell.
 *
 * @param ask.stepMl pours are whole multiples of this, rounded down; 0.5 mL unless said
 * @throws RangeError when an amount is negative or not finite, or a count of glasses is not a whole number from 0
 * @example pourSize({ stocks: [{ name: "Lamplighter's Rest", leftMl: 40, glasses: 4 }], wantedMl: 15 }).ok // true: 10 mL
 */
export function pourSize(ask: {
  readonly stocks: readonly Stock[];
  readonly wantedMl: number;
  readonly smallestMl?: number;
  readonly stepMl?: number;
}): PourSize {
  const { stocks, wantedMl, smallestMl = SMALLEST_POUR_ML, stepMl = 0.5 } = ask;
  requireAbove("a pour", "mL", wantedMl, 0);
  requireAbove("a smallest pour", "mL", smallestMl, 0);
  requireAbove("a step", "mL", stepMl, 0);
  let pourMl = wantedMl;
  let limitedBy: string | null = null;
  for (const { name, leftMl, glasses } of stocks) {
    if (!(leftMl >= 0 && leftMl < Infinity)) {
      throw new RangeError(`${name} requires 0 mL or more left, got ${leftMl} mL`);
    }
    if (!Number.isInteger(glasses) || glasses < 0) {
      throw new RangeError(`${name} requires a whole 0 or more glasses, got ${glasses} glasses`);
    }
    if (glasses === 0) continue;
    const each = wholeSteps(leftMl / glasses, stepMl) * stepMl;
    if (leftMl + 1e-9 < smallestMl * glasses) {
      const limit = smallestMl * glasses;
      const message = `${name} requires at least ${limit} mL for ${glasses} glasses of ${smallestMl} mL, got ${leftMl} mL`;
      return { ok: false, issue: { code: "too_little_left", limit, received: leftMl, message }, name };
    }
    if (each < pourMl) [pourMl, limitedBy] = [Math.max(each, smallestMl), name];
  }
  return { ok: true, pourMl, limitedBy };
}
