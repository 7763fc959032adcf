/** Two digits behind the point, a true minus, and none before nothing. */
export const fixed = (x: number, digits = 2): string =>
  x
    .toFixed(digits)
    .replace(/^-(0\.?0*)$/, "$1")
    .replace("-", "−");

/** So many figures that count. */
export const few = (x: number, figures = 3): string =>
  String(Number(x.toPrecision(figures))).replace("-", "−");

/** A share in whole hundredths; one that is not nothing is never shown as 0. */
export const hundredths = (share: number): string =>
  share > 0 && share < 0.005 ? "under 1\u00a0%" : `${Math.round(100 * share)}\u00a0%`;

/** A share or a level. */
export const percent = (share: number): string => `${few(100 * share)}\u00a0%`;

type Span = readonly [number | null, number | null];
/** An interval; an end that nothing bounds is said. */
export const ends = ([low, high]: Span, told: (x: number) => string = fixed): string =>
  `${low === null ? "no lower bound" : told(low)} to ${high === null ? "no upper bound" : told(high)}`;
