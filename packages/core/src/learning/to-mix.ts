import type { Parts } from "./recipe.ts";

/** A vessel that can be poured from as it is, and what is in it. */
export interface ReadyVessel {
  readonly vesselId: string;
  readonly parts: Parts;
}

/** A flight taken apart: what stands ready and what has to be mixed. */
export interface ToMix {
  /** Whiskeys of the mixes, in the order in which they come up. */
  readonly whiskeys: readonly string[];
  /** Whole parts of each mix, in the order of the whiskeys. */
  readonly mixes: readonly (readonly number[])[];
  /** Of each glass, in their order: the vessel, or which of the mixes, from 1. Two glasses of one recipe share a mix. */
  readonly glasses: readonly ({ readonly vesselId: string } | { readonly trial: number })[];
}

/** Two recipes that are one, whatever the number of their parts. */
export function sameParts(a: Parts, b: Parts): boolean {
  const sum = (parts: Parts): number => Object.values(parts).reduce((all, part) => all + part, 0);
  const [allA, allB] = [sum(a), sum(b)];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].every(
    (id) => (a[id] ?? 0) * allB === (b[id] ?? 0) * allA,
  );
}

/** The first of each recipe among some that have one. */
export const eachOnce = <Of extends { readonly parts: Parts }>(some: readonly Of[]): readonly Of[] =>
  some.filter(({ parts }, i) => some.findIndex((one) => sameParts(one.parts, parts)) === i);

/**
 * What of a flight can be poured as it stands, by the first vessel that holds it, and what must be mixed for it.
 *
 * @example toMix([{ malt: 1, rye: 1 }], []).mixes // [[1, 1]]
 */
export function toMix(flight: readonly Parts[], ready: readonly ReadyVessel[]): ToMix {
  const missing: Parts[] = [];
  const glasses = flight.map((parts) => {
    const vessel = ready.find((one) => sameParts(one.parts, parts));
    if (vessel !== undefined) return { vesselId: vessel.vesselId };
    const before = missing.findIndex((one) => sameParts(one, parts));
    if (before < 0) missing.push(parts);
    return { trial: before < 0 ? missing.length : before + 1 };
  });
  const whiskeys = [
    ...new Set(missing.flatMap((parts) => Object.keys(parts).filter((id) => (parts[id] ?? 0) > 0))),
  ];
  return { whiskeys, mixes: missing.map((parts) => whiskeys.map((id) => parts[id] ?? 0)), glasses };
}
