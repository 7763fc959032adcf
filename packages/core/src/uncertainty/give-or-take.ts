import type { Uncertain } from "./propagate.ts";

/** Most decimals ever printed. */
const MOST_DECIMALS = 6;

/**
 * A result as one would say it: the half width of the 95 % interval to one digit that means something (two when the first is a 1),
 * rounded up, and the value to the same decimals. "54.4" and "0.3" of 54.3641 ± 0.2479. An exact result keeps two decimals.
 *
 * Source: JCGM 100:2008, 7.2.6, which allows at most two digits of an uncertainty (from memory).
 *
 * Domain: finite results. Cost: nothing.
 *
 * @example
 * giveOrTake({ value: 54.3641, standardUncertainty: 0.13, interval95: [54.1162, 54.612], budget: [] }); // { value: "54.4", by: "0.3", decimals: 1 }
 */
export function giveOrTake(result: Uncertain): {
  readonly value: string;
  readonly by: string;
  readonly decimals: number;
} {
  const half = (result.interval95[1] - result.interval95[0]) / 2;
  if (half === 0) return { value: result.value.toFixed(2), by: "0", decimals: 2 };
  const first = Math.floor(Math.log10(half));
  const digit = half / 10 ** first < 2 ? first - 1 : first;
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, -digit));
  const unit = 10 ** Math.max(digit, -MOST_DECIMALS);
  const by = Math.ceil(half / unit - 1e-9) * unit;
  return { value: result.value.toFixed(decimals), by: by.toFixed(decimals), decimals };
}
