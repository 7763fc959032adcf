import { SMALLEST_POUR_ML, wholeSteps } from "./pour-size.ts";

/** A whiskey that cannot be bought again, and how it is used up. */
export interface Scarce {
  /** Millilitres at 20 °C that are left. */
  readonly leftMl: number;
  /** Millilitres never to be poured for a flight; 0 when all may be. */
  readonly keepMl: number;
  /** Glasses of it in one flight, over all tasters. */
  readonly glasses: number;
  readonly smallestMl?: number;
}

export interface Reserve {
  /** Millilitres that flights may use. */
  readonly usableMl: number;
  /** Whole flights at the pour asked for, and at the smallest. */
  readonly flights: number;
  readonly flightsAtSmallest: number;
}

function usable({ leftMl, keepMl, glasses, smallestMl = SMALLEST_POUR_ML }: Scarce): number {
  const amounts = [leftMl, keepMl].every((ml) => ml >= 0 && ml < Infinity);
  if (!amounts)
    throw new RangeError(`a reserve requires 0 mL or more, got ${leftMl} mL left and ${keepMl} mL kept`);
  if (!Number.isInteger(glasses) || glasses < 1) {
    throw new RangeError(`a reserve requires a whole 1 or more glasses a flight, got ${glasses} glasses`);
  }
  if (!(smallestMl > 0 && smallestMl < Infinity)) {
    throw new RangeError(`a reserve requires a smallest pour above 0 mL, got ${smallestMl} mL`);
  }
  return Math.max(0, leftMl - keepMl);
}

/**
 * How many flights what is left of a scarce whiskey still allows.
 *
 * @throws RangeError when an amount is negative or not finite, a pour is not above 0, or the glasses are not a whole 1 or more
 * @example reserve({ leftMl: 100, keepMl: 20, glasses: 4 }, 10) // { usableMl: 80, flights: 2, flightsAtSmallest: 4 }
 */
export function reserve(scarce: Scarce, pourMl: number): Reserve {
  const usableMl = usable(scarce);
  if (!(pourMl > 0 && pourMl < Infinity))
    throw new RangeError(`a pour requires more than 0 mL, got ${pourMl} mL`);
  const { glasses, smallestMl = SMALLEST_POUR_ML } = scarce;
  return {
    usableMl,
    flights: wholeSteps(usableMl, pourMl * glasses),
    flightsAtSmallest: wholeSteps(usableMl, smallestMl * glasses),
  };
}

export type PourToLast =
  | { readonly ok: true; readonly pourMl: number; readonly overMl: number }
  | {
      readonly ok: false;
      readonly issue: {
        readonly code: "reserve_too_small";
        readonly limit: number;
        readonly received: number;
        readonly message: string;
      };
      /** Flights that the smallest pour does allow. */
      readonly flights: number;
    };

/**
 * The largest pour, in whole steps, with which a scarce whiskey lasts for so many flights; `overMl` is left after the last.
 *
 * @param stepMl pours are rounded down to a multiple of it; 0.5 mL unless said
 * @throws RangeError as `reserve`, or when flights are not a whole 1 or more
 * @example pourToLast({ leftMl: 100, keepMl: 20, glasses: 4 }, 3) // { ok: true, pourMl: 6.5, overMl: 2 }
 */
export function pourToLast(scarce: Scarce, flights: number, stepMl = 0.5): PourToLast {
  const usableMl = usable(scarce);
  if (!Number.isInteger(flights) || flights < 1) {
    throw new RangeError(`a reserve requires a whole 1 or more flights, got ${flights} flights`);
  }
  if (!(stepMl > 0)) throw new RangeError(`a step requires more than 0 mL, got ${stepMl} mL`);
  const { glasses, smallestMl = SMALLEST_POUR_ML } = scarce;
  const limit = smallestMl * glasses * flights;
  if (usableMl + 1e-9 < limit) {
    const message = `${flights} flights of ${glasses} glasses require at least ${limit} mL, got ${usableMl} mL`;
    const issue = { code: "reserve_too_small" as const, limit, received: usableMl, message };
    return { ok: false, issue, flights: wholeSteps(usableMl, smallestMl * glasses) };
  }
  const pourMl = Math.max(smallestMl, wholeSteps(usableMl / (glasses * flights), stepMl) * stepMl);
  return { ok: true, pourMl, overMl: Math.max(0, usableMl - pourMl * glasses * flights) };
}
