/** A bottle to draw from. */
export interface DrawBottle {
  readonly id: string;
  /** mL free in it, and how much of that stays in it for something else. */
  readonly ml: number;
  readonly keepMl: number;
}

/** Some of one bottle for one of the pours. */
export interface BottleDraw {
  readonly bottle: string;
  /** Which of the pours, from 0. */
  readonly pour: number;
  readonly ml: number;
}

/** Less than this is what rounding leaves, mL. */
const NOTHING_ML = 1e-9;

/**
 * Spreads pours of one liquid over the bottles that hold it, in the order given, each bottle used up to what stays in it: what is short is
 * short of all of them together, never of one.
 *
 * @param pours mL wanted, pour by pour
 * @returns draws pour by pour, and the mL that no bottle gives
 * @throws RangeError on an amount that is not 0 mL or more
 * @example drawBottles([{ id: "a", ml: 20, keepMl: 15 }, { id: "b", ml: 30, keepMl: 0 }], [25]).draws // 5 of a, 20 of b
 */
export function drawBottles(
  bottles: readonly DrawBottle[],
  pours: readonly number[],
): { readonly draws: readonly BottleDraw[]; readonly shortMl: number } {
  for (const [what, ml] of [
    ...bottles.flatMap((one) => [
      [one.id, one.ml],
      [`what stays in ${one.id}`, one.keepMl],
    ]),
    ...pours.map((ml, i) => [`pour ${i + 1}`, ml]),
  ] as [string, number][])
    if (!(ml >= 0 && ml < Infinity)) throw new RangeError(`${what} requires 0 mL or more, got ${ml} mL`);
  const left = bottles.map(({ id, ml, keepMl }) => ({ id, ml: Math.max(0, ml - keepMl) }));
  const draws: BottleDraw[] = [];
  let shortMl = 0;
  for (const [pour, ml] of pours.entries()) {
    let wanted = ml;
    for (const bottle of left) {
      const taken = Math.min(wanted, bottle.ml);
      if (taken <= NOTHING_ML) continue;
      bottle.ml -= taken;
      wanted -= taken;
      draws.push({ bottle: bottle.id, pour, ml: taken });
    }
    if (wanted > NOTHING_ML) shortMl += wanted;
  }
  return { draws, shortMl };
}
