import type { NextFlightAnswer } from "./next-flight.ts";

/** How many rankings and marks a belief rests on. */
export function restsOn({ rankings, marks }: NextFlightAnswer["counted"]): string {
  const some = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
  return `This rests on ${some(rankings, "ranking")} and ${some(marks, "mark")}.`;
}

/** Of what, and by how much, glasses ask for more than is left; by the names of the whiskeys. */
export const lackInWords = (
  { id, needMl, leftMl }: NextFlightAnswer["lacks"][number],
  nameOf: (id: string) => string,
): string =>
  `Too little is left of ${nameOf(id)} for these glasses together: they ask for ${needMl.toFixed(1)} mL, ${leftMl.toFixed(1)} mL are left, ${(needMl - leftMl).toFixed(1)} mL are lacking.`;

/** What kept some mixes out of a flight, by the names of the whiskeys. */
export const tooLittleLeft = (names: readonly string[]): string =>
  `Too little is left of ${names.join(", ")} for some mixes: none of them stands in this flight.`;
