import { drawBottles } from "@partsproof/core/trials";
import type { TrialSet, TrialsAsked } from "../../protocol/index.ts";
import { stockOf } from "../batches/index.ts";
import { freeMl, type Shelf } from "../shelf/index.ts";
import { keptFor, standingGlasses } from "./set-standing.ts";

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

/**
 * B3: every bottle is taken in hand once and goes round all trials, so that one syringe is rinsed once a bottle. Opened
 * ones first, as a batch takes them; B7: what a glass of the flight is poured from stays in its bottle.
 */
export function drawsOf(
  shelf: Shelf,
  asked: TrialsAsked,
  pours: readonly TrialPour[],
): { readonly draws: readonly Draw[]; readonly parts: readonly { keptMl: number; shortMl: number }[] } {
  const keep = keptFor(standingGlasses(shelf, asked.flight));
  const draws: Draw[] = [];
  const parts = asked.parts.map(({ of }, part) => {
    const bottles = stockOf(shelf, of).map(({ id }) => {
      const ml = freeMl(shelf, id);
      return { id, ml, keepMl: Math.min(ml, keep.get(id) ?? 0) };
    });
    const drawn = drawBottles(
      bottles,
      pours.map(({ ml }) => ml[part] ?? 0),
    );
    for (const { bottle, pour, ml } of drawn.draws)
      draws.push({
        part,
        trial: pours[pour]?.trial ?? 0,
        vesselId: bottle,
        label: shelf.vessels.get(bottle)?.label ?? "",
        ml,
      });
    return { keptMl: bottles.reduce((sum, { keepMl }) => sum + keepMl, 0), shortMl: drawn.shortMl };
  });
  return { draws, parts };
}

/** What all trials that are not poured yet need of each part, bottle by bottle. */
export function bottlesOf(
  shelf: Shelf,
  asked: TrialsAsked,
  labels: readonly string[],
  pours: readonly TrialPour[],
): TrialSet["bottles"] {
  const { draws, parts } = drawsOf(shelf, asked, pours);
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
      keptMl: parts[part]?.keptMl ?? 0,
      shortMl: parts[part]?.shortMl ?? 0,
    };
  });
}
