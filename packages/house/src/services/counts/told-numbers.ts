import type { Interval } from "@partsproof/core/statistics";

const bounded = (x: number): number | null => (Number.isFinite(x) ? x : null);

/** An interval as JSON has it: an end that nothing bounds is null. */
export const span = ({ low, high }: Interval): [number | null, number | null] => [
  bounded(low),
  bounded(high),
];

export { bounded };

export const DEFAULT_LEVEL = 0.95;
/** "95 %". */
export const percent = (share: number): string => `${Number((100 * share).toPrecision(3))} %`;
