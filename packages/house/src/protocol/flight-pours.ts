import type { Parts, ShelfLeft } from "@partsproof/core/learning";
import { pourInSteps } from "@partsproof/core/trials";
import type { NextFlightDraft } from "./next-flight.ts";

/** Common practice, no source: of a mix two small pours for everybody who tastes, of what stands ready one; in all at most so much. */
const MIX_ML = 30;
const POUR_ML = 15;
export const MOST_MIX_ML = 200;
/** How a mix is measured: in whole steps of a syringe, shares within a hundredth. */
export const MEASURED = { syringeMl: 0.5, within: 0.01 } as const;

/** mL that a mix is made of, and that are poured of what stands ready, for so many who taste. */
export function poursFor(tasters: number): { readonly mixMl: number; readonly pourMl: number } {
  const people = Math.max(1, tasters);
  return { mixMl: Math.min(MOST_MIX_ML, MIX_ML * people), pourMl: POUR_ML * people };
}

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
