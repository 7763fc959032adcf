import { attributeName } from "@partsproof/core/sensory";

/** Intensities of 0 to 10 by attribute; what is left out was not said. */
export type Strengths = ReadonlyMap<string, number>;

/** "smoke 6, vanilla 3.5", or nothing. */
export const strengthWords = (strengths: Strengths): string =>
  [...strengths].map(([id, value]) => `${attributeName(id)} ${Number(value.toFixed(2))}`).join(", ");
