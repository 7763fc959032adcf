import type { Flight } from "@partsproof/house/protocol";

/** Where somebody is with their glasses: in sets and rounds, in which. */
export function whereWords(
  position: number,
  { setsEach, glassesEach, method }: Pick<Flight["design"], "setsEach" | "glassesEach" | "method">,
): string {
  if (setsEach === 0) return `at glass ${position} of their row`;
  return `at ${method === null ? "round" : "set"} ${Math.ceil((position * setsEach) / glassesEach)} of ${setsEach}`;
}
