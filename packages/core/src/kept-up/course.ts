import { leftAt } from "./keep-up.ts";
import type { KeptUp } from "./step.ts";

/** One whiskey in the bottle. */
export interface KeptUpPart {
  readonly liquidId: string;
  readonly ethanolG: number;
  readonly waterG: number;
  /** Of all the pure alcohol, by mass; of all the mass where there is none. */
  readonly share: number;
}

/** What is in the bottle after a step, the largest share first. */
export function compositionAt(folded: KeptUp, step: number): KeptUpPart[] {
  const held = new Map<string, { ethanolG: number; waterG: number }>();
  for (const addition of folded.additions) {
    if (addition.step > step) break;
    const left = leftAt(folded.kept, folded.age, addition.step, step);
    if (left === 0) continue;
    const so = held.get(addition.liquidId) ?? { ethanolG: 0, waterG: 0 };
    so.ethanolG += addition.ethanolG * left;
    so.waterG += addition.waterG * left;
    held.set(addition.liquidId, so);
  }
  let [ethanol, mass] = [0, 0];
  for (const { ethanolG, waterG } of held.values()) {
    ethanol += ethanolG;
    mass += ethanolG + waterG;
  }
  return [...held]
    .map(([liquidId, { ethanolG, waterG }]) => ({
      liquidId,
      ethanolG,
      waterG,
      share: ethanol > 0 ? ethanolG / ethanol : mass > 0 ? (ethanolG + waterG) / mass : 0,
    }))
    .toSorted((a, b) => b.share - a.share || (a.liquidId < b.liquidId ? -1 : 1));
}

/** A whiskey that brought less than this share of the alcohol does not count (ledger D4). */
const COUNTS_ABOVE = 1e-9;

/** The youngest age after a step: null where a whiskey in it states none, or the bottle is empty. Water has no alcohol and no age. */
export function youngestAt(
  folded: KeptUp,
  step: number,
  ageYears: ReadonlyMap<string, number | null>,
): number | null {
  let youngest: number | null = null;
  for (const { liquidId, ethanolG, share } of compositionAt(folded, step)) {
    if (!(ethanolG > 0 && share > COUNTS_ABOVE)) continue;
    const years = ageYears.get(liquidId) ?? null;
    if (years === null) return null;
    youngest = youngest === null ? years : Math.min(youngest, years);
  }
  return youngest;
}

/** Some steps with what is in the bottle after each, evenly spread over the steps, the last one with them: for drawing. */
export function courseOf(
  folded: KeptUp,
  points: number,
): readonly { readonly step: number; readonly parts: readonly KeptUpPart[] }[] {
  const last = folded.kept.length - 1;
  if (last < 0) return [];
  const steps = Array.from({ length: points }, (_, i) => Math.round((i * last) / Math.max(1, points - 1)));
  return [...new Set(steps)].map((step) => ({ step, parts: compositionAt(folded, step) }));
}
