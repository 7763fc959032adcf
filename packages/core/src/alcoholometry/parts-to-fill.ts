import { within } from "../quantity/index.ts";
import type { Abv20, Millilitres20 } from "../quantity/index.ts";
import { adjustStrength } from "./adjust-strength.ts";
import type { NotBetween } from "./adjust-strength.ts";
import { mix } from "./mix.ts";
import type { Mixture, Pour } from "./mix.ts";
import type { Part } from "./mix-parts.ts";
import { mixParts } from "./mix-parts.ts";

/** The pours that fill the vessel, the reducing one last; `mixture` is all of them. */
export type PartsToFill = {
  readonly ok: true;
  readonly pours: readonly Pour[];
  /** How much of `add` goes in; null when no target strength was asked. */
  readonly reducing: Pour | null;
  readonly mixture: Mixture;
};

/** Anything: the answer is proportional to it. */
const TRIAL_ML = 1000 as Millilitres20;

/**
 * How much of each part of a recipe fills a vessel exactly, contraction counted, if wanted reduced to a strength with water or
 * another liquid: parts keep their ratio, the mixture's volume is `finalMl`.
 *
 * Domain: as `mixParts`; final volume above 0. A mixture keeps its strength when everything is made larger, so one trial mixing,
 * scaled, is the exact answer. Accuracy: that of `density`; volume within 1e-9 of itself. A target that the parts cannot be
 * taken to is `adjustStrength`'s "no".
 *
 * Source: conservation of mass and of ethanol, with OIML R 22 densities. Cost: two mixings, below 5 µs.
 *
 * @throws RangeError when a part, strength or volume is outside its domain.
 * @example
 * const parts = [{ parts: 2, abv20: abv20(62.4) }, { parts: 1, abv20: abv20(46) }];
 * partsToFill({ parts, finalMl: millilitres20(700) }).pours[0].volumeMl; // 467.0…
 */
export function partsToFill(ask: {
  readonly parts: readonly Part[];
  readonly finalMl: Millilitres20;
  readonly to?: Abv20;
  readonly add?: Abv20;
}): PartsToFill | NotBetween {
  const { parts, finalMl, to, add = 0 as Abv20 } = ask;
  within("final volume", "mL", finalMl, Number.MIN_VALUE, Infinity);
  const trial = mixParts(parts, TRIAL_ML);
  const all = parts.reduce((sum, part) => sum + part.parts, 0);
  const adjusted = to === undefined ? null : adjustStrength({ start: trial, to, add });
  if (adjusted?.ok === false) return adjusted;
  const scale = finalMl / (adjusted === null ? trial.volumeMl : adjusted.after.volumeMl);
  const pours = parts.map((part) => ({
    volumeMl: ((part.parts / all) * TRIAL_ML * scale) as Millilitres20,
    abv20: part.abv20,
  }));
  const reducing =
    adjusted === null ? null : { volumeMl: (adjusted.addMl * scale) as Millilitres20, abv20: add };
  const every = reducing === null ? pours : [...pours, reducing];
  return { ok: true, pours: every, reducing, mixture: mix(every) };
}
