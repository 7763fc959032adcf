import type { Parts, ShelfLeft } from "@partsproof/core/learning";
import { pourInSteps } from "@partsproof/core/trials";
import { MEASURED, MIX_ML, MOST_MIX_ML, POUR_ML } from "./flight-pours.ts";
import type { NextFlightDraft } from "./next-flight.ts";

/** What is left of a shelf and what each glass takes of it, as the choice of a flight counts it: a mix as a trial is measured. */
export function shelfLeft({
  leftMl,
  mixMl = MIX_ML,
  pourMl = POUR_ML,
  stands = [],
}: NonNullable<NextFlightDraft["shelf"]>): ShelfLeft {
  const standing = new Set(stands.map(inOneWay));
  const takes = (parts: Parts, ready: boolean): Readonly<Record<string, number>> => {
    const used = Object.entries(parts).filter(([, part]) => part > 0);
    // A mix that stands ready is poured from its own vessel.
    if (ready || (standing.size > 0 && standing.has(inOneWay(parts))))
      return used.length === 1 ? Object.fromEntries(used.map(([id]) => [id, pourMl])) : {};
    const all = used.reduce((sum, [, part]) => sum + part, 0);
    const { ml } = pourInSteps(
      used.map(([, part]) => part / all),
      {
        leastMl: mixMl,
        mostMl: MOST_MIX_ML,
        stepMl: used.map(() => MEASURED.syringeMl),
        within: MEASURED.within,
      },
    );
    return Object.fromEntries(used.map(([id], i) => [id, ml[i] as number]));
  };
  return { leftMl, takes };
}

/** One text for one recipe, whatever the number of its parts. */
function inOneWay(parts: Parts): string {
  const used = Object.entries(parts).filter(([, part]) => part > 0);
  const all = used.reduce((common, [, part]) => divisor(common, part), 0);
  return JSON.stringify(used.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([id, part]) => [id, part / all]));
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
