import type { TrialSet, TrialsAsked } from "../../protocol/index.ts";
import { stockOf } from "../batches/index.ts";
import { freeMl, type Shelf } from "../shelf/index.ts";

/** Amounts of one trial, by part, in mL at 20 °C. */
export interface TrialPour {
  readonly trial: number;
  readonly ml: readonly number[];
}

/** Some of one bottle into one trial. */
export interface Draw {
  readonly part: number;
  readonly trial: number;
  readonly vesselId: string;
  readonly label: string;
  readonly ml: number;
}

/** Less than this is what rounding leaves. */
const NOTHING_ML = 1e-9;

/**
 * B3: every bottle is taken in hand once and goes round all trials, so that one syringe is rinsed once a bottle. Opened
 * ones first, as a batch takes them.
 */
export function drawsOf(
  shelf: Shelf,
  asked: TrialsAsked,
  pours: readonly TrialPour[],
): { readonly draws: readonly Draw[]; readonly shortMl: readonly number[] } {
  const draws: Draw[] = [];
  const shortMl = asked.parts.map(({ of }, part) => {
    const left = stockOf(shelf, of).map(({ id, label }) => ({ id, label, ml: freeMl(shelf, id) }));
    let short = 0;
    for (const { trial, ml } of pours) {
      let wanted = ml[part] ?? 0;
      for (const vessel of left) {
        const taken = Math.min(wanted, vessel.ml);
        if (taken <= NOTHING_ML) continue;
        vessel.ml -= taken;
        wanted -= taken;
        draws.push({ part, trial, vesselId: vessel.id, label: vessel.label, ml: taken });
      }
      if (wanted > NOTHING_ML) short += wanted;
    }
    return short;
  });
  return { draws, shortMl };
}

/** What all trials that are not poured yet need of each part, bottle by bottle. */
export function bottlesOf(
  shelf: Shelf,
  asked: TrialsAsked,
  labels: readonly string[],
  pours: readonly TrialPour[],
): TrialSet["bottles"] {
  const { draws, shortMl } = drawsOf(shelf, asked, pours);
  return labels.map((label, part) => {
    const own = draws.filter((draw) => draw.part === part);
    const from = [...Map.groupBy(own, ({ vesselId }) => vesselId)].map(([vesselId, some]) => ({
      vesselId,
      label: some[0]?.label ?? "",
      ml: some.reduce((sum, { ml }) => sum + ml, 0),
    }));
    return {
      label,
      needMl: pours.reduce((sum, { ml }) => sum + (ml[part] ?? 0), 0),
      from,
      shortMl: shortMl[part] ?? 0,
    };
  });
}
