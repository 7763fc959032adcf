import type { Flight } from "@partsproof/house/protocol";

/** Where somebody is with their glasses: in sets and rounds, in which, and at which of its glasses. */
export function whereWords(
  position: number,
  { setsEach, glassesEach, method }: Pick<Flight["design"], "setsEach" | "glassesEach" | "method">,
): string {
  if (setsEach === 0) return `at glass ${position} of their row`;
  const inSet = glassesEach / setsEach;
  const set = Math.ceil(position / inSet);
  return `at ${method === null ? "round" : "set"} ${set} of ${setsEach}, glass ${position - (set - 1) * inSet}`;
}
