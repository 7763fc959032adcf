import type { Seeking } from "./use-search.ts";

/** Distances carry two decimals: the scale is 0 to 10, and noted in halves. */
export const printDistance = (distance: number): string => distance.toFixed(2);

/** How sure the list is, in a sentence. "Proven" is said of a finished search only. */
export function proofWords(
  { told, current, state }: Pick<Seeking, "told" | "current" | "state">,
  besides: boolean,
): string {
  if (state === "nothing asked") return "Say what you are after, and what comes closest shows here.";
  if (state === "broken") return "The search could not be run in this browser.";
  if (told === null || !current) return "Looking …";
  if (told.done) {
    if (told.best === null) return "No recipe keeps all your rules: proven.";
    return besides
      ? "Proven: nothing better by closeness and what else you count keeps your rules."
      : "Proven: nothing closer keeps your rules.";
  }
  const tail = state === "stopped" ? "stopped" : "still looking";
  if (told.best === null) return `Nothing found yet, ${tail}.`;
  return `Within ${printGap(told.gap)} of the best possible, ${tail}.`;
}

/** How far off the best possible may be. */
export const printGap = (gap: number): string => (gap < 0.005 ? LEAST_GAP : printDistance(gap));

/** What two decimals no longer say. */
export const LEAST_GAP = "less than 0.01";
