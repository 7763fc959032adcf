import { rootByBrent } from "../numeric/index.ts";
import { within } from "../quantity/index.ts";
import type { Abv20, Millilitres20 } from "../quantity/index.ts";
import { adjustStrength } from "./adjust-strength.ts";
import { fillVessel } from "./fill-vessel.ts";
import { mix } from "./mix.ts";
import type { Mixture, Pour } from "./mix.ts";
import type { OutOfReachBut } from "./out-of-reach.ts";

/** One part of a recipe while it is being poured. */
export type PartPoured = {
  readonly parts: number;
  readonly abv20: Abv20;
  /** What is in the vessel of it already, at 20 °C. */
  readonly pouredMl: Millilitres20;
  /** No more of it can be added (the bottle is empty, or it is done with). */
  readonly fixed?: boolean;
};

/** What is still to be poured. */
export type PoursResolved = {
  readonly ok: true;
  /** Whether the parts come out in the recipe's ratio. */
  readonly ratioKept: boolean;
  /** Whether the mixture comes out at `to`; true when no strength was asked. */
  readonly strengthKept: boolean;
  /** Still to add of each part, in the order given. */
  readonly addMl: readonly Millilitres20[];
  /** Still to add of the reducing liquid. */
  readonly reducingMl: Millilitres20;
  /** The largest difference of a part's share of the parts from the recipe's, 0 to 1. */
  readonly worstShareOff: number;
  readonly mixture: Mixture;
};

/**
 * Too small a vessel: `nearest` adds nothing more of the parts, and of the reducing liquid only what fits (null: it is over already).
 * Nothing to pour: a part that nothing is poured of is fixed, so that the recipe's ratio asks for nothing of all; `nearest` is null.
 */
export type NotResolved = OutOfReachBut<"vessel_too_small" | "nothing_to_pour", PoursResolved | null>;

type Ask = {
  readonly parts: readonly PartPoured[];
  /** The sum of the parts that was planned, at 20 °C, before contraction and reducing. */
  readonly plannedMl: Millilitres20;
  readonly capacityMl?: Millilitres20;
  readonly to?: Abv20;
  readonly add?: Abv20;
};

/** Amounts and volumes nearer than this share of the whole are equal. */
const ROUNDING = 1e-9;

/**
 * Solves the rest of a recipe again after a part was poured too far: what is in stays in. If the vessel allows, everything else
 * is made larger until the ratio is right again, parts already poured included unless `fixed`. Else the nearest: the parts
 * that have room keep their ratio to one another and grow until the vessel is full (with the reducing liquid, if any).
 *
 * Domain: any amounts; strengths 0 to 100 % vol. With nothing overpoured and nothing fixed it gives the plan. A vessel that
 * what is in it (reduced to its strength) would overfill is a "no" with the nearest that fits; a rest in which nothing is poured, a "no".
 *
 * Accuracy: volumes within 1e-9 of the capacity. Method: a part's amount is max(poured, k times its parts), and k is found in
 * closed form, or by Brent where the vessel limits. Cost: up to a hundred mixings, below a millisecond.
 *
 * Source: conservation of mass and of ethanol; the choice of the nearest is this project's own.
 *
 * @throws RangeError when an amount or strength is outside its domain, or no part is above 0.
 * @example
 * const first = { parts: 2, abv20: abv20(62.4), pouredMl: millilitres20(110) };
 * const second = { parts: 1, abv20: abv20(46), pouredMl: millilitres20(0) };
 * resolvePours({ parts: [first, second], plannedMl: millilitres20(150) }).addMl; // [0, 55]
 */
export function resolvePours(ask: Ask): PoursResolved | NotResolved {
  const { parts, plannedMl, capacityMl = Infinity } = ask;
  within("planned volume", "mL", plannedMl, 0, Infinity);
  if (capacityMl !== Infinity) within("capacity", "mL", capacityMl, Number.MIN_VALUE, Infinity);
  for (const part of parts) {
    within("parts", "", part.parts, 0, Infinity);
    within("volume", "mL", part.pouredMl, 0, Infinity);
  }
  const all = parts.reduce((sum, part) => sum + part.parts, 0);
  if (!(all > 0)) throw new RangeError(`parts requires a sum above 0, got ${all}`);
  const wanted = fullScale(parts, plannedMl / all);
  if (wanted === 0 && parts.every((part) => part.pouredMl === 0)) return NOTHING;
  const volumeAt = (k: number): number => {
    const empty = k === 0 && parts.every((part) => part.pouredMl === 0);
    return empty ? 0 : resolved(ask, k, Infinity).mixture.volumeMl;
  };
  const room = capacityMl * (1 + ROUNDING);
  if (volumeAt(wanted) <= room) return resolved(ask, wanted, Infinity);
  const leastMl = volumeAt(0);
  if (leastMl > room) return tooSmall(ask, leastMl, capacityMl);
  // Full already, to within rounding.
  if (leastMl >= capacityMl) return resolved(ask, 0, Infinity);
  return resolved(
    ask,
    rootByBrent((k) => volumeAt(k) - capacityMl, 0, wanted),
    Infinity,
  );
}

const NOTHING: NotResolved = {
  ok: false,
  issue: {
    code: "nothing_to_pour",
    limit: 0,
    received: 0,
    message: "the rest of a recipe requires something poured before a part is done, got 0 mL of all",
  },
  nearest: null,
};

/** The smallest scale at which no part is over its parts: the plan's, unless a part forces more, or a fixed one less. */
function fullScale(parts: readonly PartPoured[], planned: number): number {
  const poured = parts.filter((part) => part.parts > 0).map((part) => part.pouredMl / part.parts);
  const held = parts.some((part) => part.fixed === true) ? 0 : planned;
  return Math.max(held, ...poured);
}

/** Every part at `k` times its parts or what is poured of it, then reduced; the reducing liquid at most `mostMl`. */
function resolved(ask: Ask, k: number, mostMl: number): PoursResolved {
  const { parts, to, add = 0 as Abv20 } = ask;
  const addMl = parts.map((part) =>
    part.fixed === true ? 0 : Math.max(0, k * part.parts - part.pouredMl),
  ) as Millilitres20[];
  const pours: Pour[] = parts.map((part, n) => ({
    volumeMl: (part.pouredMl + (addMl[n] as number)) as Millilitres20,
    abv20: part.abv20,
  }));
  const unreduced = mix(pours);
  const adjusted = to === undefined ? null : adjustStrength({ start: unreduced, to, add });
  const wantedMl = adjusted?.ok === true ? adjusted.addMl : 0;
  const reducingMl = Math.min(wantedMl, mostMl) as Millilitres20;
  const worstShareOff = worstOff(parts, pours);
  return {
    ok: true,
    ratioKept: worstShareOff < ROUNDING,
    strengthKept: adjusted?.ok !== false && reducingMl === wantedMl,
    addMl,
    reducingMl,
    worstShareOff,
    mixture: reducingMl === 0 ? unreduced : mix([...pours, { volumeMl: reducingMl, abv20: add }]),
  };
}

/** The largest difference of a part's share of the parts' volume from its share in the recipe. */
function worstOff(parts: readonly PartPoured[], pours: readonly Pour[]): number {
  const asked = parts.reduce((sum, part) => sum + part.parts, 0);
  const had = pours.reduce((sum, pour) => sum + pour.volumeMl, 0);
  return Math.max(
    ...parts.map((part, n) => Math.abs((pours[n] as Pour).volumeMl / had - part.parts / asked)),
  );
}

function tooSmall(ask: Ask, leastMl: number, capacityMl: number): NotResolved {
  const { volumeMl, ethanolG, waterG } = resolved(ask, 0, 0).mixture;
  const capacity = capacityMl as Millilitres20;
  const filled = fillVessel({ ethanolG, waterG, capacityMl: capacity, abv20: ask.add ?? (0 as Abv20) });
  const what = volumeMl > capacityMl ? "what is in it" : "what is in it, reduced,";
  const message = `the vessel requires at least the ${leastMl.toFixed(1)} mL that ${what} comes to, got ${capacityMl} mL`;
  const issue = { code: "vessel_too_small", limit: leastMl, received: capacityMl, message } as const;
  return { ok: false, issue, nearest: filled.ok ? resolved(ask, 0, filled.addMl) : null };
}
