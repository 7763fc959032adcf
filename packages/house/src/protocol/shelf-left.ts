import type { Parts, ShelfLeft } from "@partsproof/core/learning";
import { pourInSteps } from "@partsproof/core/trials";
import { MEASURED, MIX_ML, MOST_MIX_ML, POUR_ML } from "./flight-pours.ts";
import type { NextFlightDraft } from "./next-flight.ts";

/** What is left of a shelf and what each glass takes of it, as the choice of a flight counts it: a mix as a trial is measured. */
export function shelfLeft({
  leftMl,
  mixMl = MIX_ML,
  pourMl = POUR_ML,
}: NonNullable<NextFlightDraft["shelf"]>): ShelfLeft {
  const takes = (parts: Parts, ready: boolean): Readonly<Record<string, number>> => {
    const used = Object.entries(parts).filter(([, part]) => part > 0);
    // A mix that stands ready is poured from its own vessel.
    if (ready) return used.length === 1 ? Object.fromEntries(used.map(([id]) => [id, pourMl])) : {};
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
