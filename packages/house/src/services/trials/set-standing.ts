import { POUR_ML, type TrialsAsked } from "../../protocol/index.ts";
import { freeMl, nameOf, type Shelf, volumeIn } from "../shelf/index.ts";

/** A glass of a flight that is poured from a vessel as it stands. */
export interface StandingGlass {
  /** From 1. */
  readonly glass: number;
  /** Null where nothing of it is on the shelf any more. */
  readonly vesselId: string | null;
  readonly label: string;
  /** mL that stay in it for this glass: all of it, where it holds less. */
  readonly keepMl: number;
  /** The vessel that was named, where another of the same pours it. */
  readonly insteadOf: string | null;
}

/**
 * B7: what each glass that is no trial is poured from. The vessel that was named for it; where that holds too little by now, the fullest of
 * those that hold the same and are named for no other glass.
 */
export function standingGlasses(shelf: Shelf, flight: TrialsAsked["flight"]): readonly StandingGlass[] {
  if (flight === undefined) return [];
  const needMl = flight.pourMl ?? POUR_ML;
  const named = new Set(flight.glasses.flatMap(({ of }) => ("vesselId" in of ? [of.vesselId] : [])));
  return flight.glasses.flatMap(({ of }, i): StandingGlass[] => {
    if (!("vesselId" in of)) return [];
    const own = shelf.vessels.get(of.vesselId);
    if (own === undefined)
      return [{ glass: i + 1, vesselId: null, label: "no longer on the shelf", keepMl: 0, insteadOf: null }];
    const free = (id: string): number => freeMl(shelf, id);
    const name = nameThere(shelf, own.id);
    const others = [...shelf.vessels.values()]
      .filter(({ id }) => !named.has(id) && nameThere(shelf, id) === name)
      .toSorted((a, b) => free(b.id) - free(a.id) || (a.id < b.id ? -1 : 1));
    const [other] = others;
    const takes = free(own.id) < needMl && other !== undefined && free(other.id) > free(own.id) ? other : own;
    return [
      {
        glass: i + 1,
        vesselId: takes.id,
        label: takes.label,
        keepMl: Math.min(needMl, free(takes.id)),
        insteadOf: takes === own ? null : own.label,
      },
    ];
  });
}

/** mL that stay in each vessel; two glasses of one vessel are one recipe, poured once. */
export function keptFor(glasses: readonly StandingGlass[]): ReadonlyMap<string, number> {
  return new Map(
    glasses.flatMap(({ vesselId, keepMl }) => (vesselId === null ? [] : [[vesselId, keepMl] as const])),
  );
}

/** Its name in the glass; of a bottle that is empty, what it was bought as. */
function nameThere(shelf: Shelf, vesselId: string): string {
  const vessel = shelf.vessels.get(vesselId);
  return vessel?.kind === "bottle" && vessel.whiskeyId !== null && volumeIn(shelf, vesselId) <= 0
    ? `whiskey:${vessel.whiskeyId}`
    : nameOf(shelf, vesselId).nameId;
}
