import { massFractionFromAbv20 } from "@partsproof/core/alcoholometry";
import { abv20 } from "@partsproof/core/quantity";
import type { Contents } from "@partsproof/house/protocol";

/** Grams of ethanol in one millilitre (20 °C) of what a vessel holds; 0 for an empty one. */
export function ethanolPerMl({ abv20: strength, massG, volumeMl }: Contents): number {
  return strength === null || volumeMl <= 0 ? 0 : (massFractionFromAbv20(abv20(strength)) * massG) / volumeMl;
}

/**
 * The most alcohol one taster can be poured, in grams: the strongest glasses that the names on offer allow. Reckoned from
 * the names and not from the glasses, as the house does (services, F12), so that the figure gives nothing away.
 *
 * @param offered one entry each time a name is offered: the grams in a millilitre of its strongest vessel
 */
export function alcoholAtMostG(offered: readonly number[], glasses: number, pourMl: number): number {
  return offered
    .toSorted((a, b) => b - a)
    .slice(0, glasses)
    .reduce((sum, each) => sum + each * pourMl, 0);
}
