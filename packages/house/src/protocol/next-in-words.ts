import type { NextFlightAnswer } from "./next-flight.ts";

/** How many rankings and marks a belief rests on. */
export function restsOn({ rankings, marks }: NextFlightAnswer["counted"]): string {
  const some = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
  return `This rests on ${some(rankings, "ranking")} and ${some(marks, "mark")}.`;
}

/** What kept some mixes out of a flight, by the names of the whiskeys. */
export const tooLittleLeft = (names: readonly string[]): string =>
  `Too little is left of ${names.join(", ")} for some mixes: none of them stands in this flight.`;
