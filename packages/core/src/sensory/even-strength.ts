import { waterToFill } from "../alcoholometry/index.ts";
import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";

/** What goes into one glass so that its strength gives nothing away. */
export interface EvenedGlass {
  readonly liquidMl: Millilitres20;
  readonly waterMl: Millilitres20;
  readonly waterG: Grams;
}

export interface EvenedFlight {
  readonly ok: true;
  /** The strength all glasses come to, % vol at 20 °C. */
  readonly to: Abv20;
  /** In the order of the strengths given. */
  readonly glasses: readonly EvenedGlass[];
}

export interface NotEvened {
  readonly ok: false;
  readonly issue: {
    readonly code: "glass_weaker_than_target" | "target_without_alcohol";
    readonly limit: number;
    readonly received: number;
    readonly message: string;
  };
  /** The glasses, by index, that water cannot bring up to the strength asked for. */
  readonly weaker: readonly number[];
}

/**
 * How much of each whiskey and how much water give glasses of the same volume and the same strength: the lowest of the flight,
 * or a named one that none of them is below.
 *
 * Volumes at 20 °C; liquid and water add up to a little more than the glass, since the mixture shrinks. Accuracy: that of
 * `waterToFill` (OIML R 22 density); a syringe's is the larger error. Mixing water in shortly before is not the same as a
 * rested reduction: common practice, no source.
 *
 * @param to "lowest", or a strength in % vol
 * @throws RangeError when there is no glass, or a volume or strength is outside its domain
 * @example
 * evenStrength([abv20(60), abv20(43)], millilitres20(15), "lowest");
 * // { ok: true, to: 43, glasses: [{ liquidMl: 10.75…, waterMl: 4.38…, … }, { liquidMl: 15, waterMl: 0, waterG: 0 }] }
 */
export function evenStrength(
  strengths: readonly Abv20[],
  glassMl: Millilitres20,
  to: Abv20 | "lowest",
): EvenedFlight | NotEvened {
  if (strengths.length === 0) throw new RangeError("evenStrength requires a glass or more, got 0 glasses");
  const lowest = strengths.reduce((so, next) => (next < so ? next : so));
  const target = to === "lowest" ? lowest : to;
  const weaker = strengths.flatMap((strength, i) => (strength < target ? [i] : []));
  if (weaker.length > 0) {
    const message = `evening out requires a strength of at most the weakest glass's ${lowest} % vol, got ${target} % vol`;
    const issue = { code: "glass_weaker_than_target" as const, limit: lowest, received: target, message };
    return { ok: false, issue, weaker };
  }
  const glasses: EvenedGlass[] = [];
  for (const from of strengths) {
    const filled = waterToFill({ finalMl: glassMl, from, to: target });
    if (!filled.ok) {
      const message =
        "evening out requires a strength above 0 % vol where a glass holds alcohol, got 0 % vol";
      return { ok: false, issue: { code: "target_without_alcohol", limit: 0, received: 0, message }, weaker };
    }
    glasses.push({ liquidMl: filled.liquidMl, waterMl: filled.waterMl, waterG: filled.waterG });
  }
  return { ok: true, to: target, glasses };
}
