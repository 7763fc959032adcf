/** Common practice, no source: of a mix two small pours for everybody who tastes, of what stands ready one; in all at most so much. */
export const MIX_ML = 30;
export const POUR_ML = 15;
export const MOST_MIX_ML = 200;
/** How a mix is measured: in whole steps of a syringe, shares within a hundredth. */
export const MEASURED = { syringeMl: 0.5, within: 0.01 } as const;

/** mL that a mix is made of, and that are poured of what stands ready, for so many who taste. */
export function poursFor(tasters: number): { readonly mixMl: number; readonly pourMl: number } {
  const people = Math.max(1, tasters);
  return { mixMl: Math.min(MOST_MIX_ML, MIX_ML * people), pourMl: POUR_ML * people };
}
