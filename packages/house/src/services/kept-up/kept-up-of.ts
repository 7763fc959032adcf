import { keepUp, leftAt } from "@partsproof/core/kept-up";
import { contentsOfVessel, WATER } from "@partsproof/core/ledger";
import type { KeptUp } from "../../protocol/index.ts";
import type { VesselRow } from "../rows.ts";
import { liquidLabel, type Shelf, shownContents } from "../shelf/index.ts";
import { courseOf } from "./course-of.ts";
import { stepsOf } from "./steps-of.ts";

/** U1, U2: what became of every addition to a bottle, and what was in it over time. */
export function keptUpOf(shelf: Shelf, vessel: VesselRow, points: number): KeptUp {
  const kept = stepsOf(shelf, vessel.id);
  const folded = keepUp(kept.steps, vessel.capacityMl);
  if (!folded.ok)
    throw new Error(`the story of ${vessel.id} requires the ledger's own steps, got ${folded.code}`);
  const liquids = [...new Set(kept.steps.flatMap((step) => (step.kind === "add" ? [step.liquidId] : [])))];
  const ages = new Map(liquids.map((id) => [id, shelf.whiskeys.get(id)?.ageYears ?? null]));
  const last = kept.steps.length - 1;
  const bySteps = new Map(folded.additions.map((addition) => [addition.step, addition]));
  const now = Date.parse(kept.additions[0]?.at ?? new Date(0).toISOString());
  return {
    vesselId: vessel.id,
    label: vessel.label,
    capacityMl: vessel.capacityMl,
    liquids: liquids.map((liquidId) => ({
      liquidId,
      label: liquidId === WATER ? "water" : liquidLabel(shelf, liquidId),
      ageYears: ages.get(liquidId) ?? null,
    })),
    additions: kept.additions.map(({ transferId, at, from, ml, steps: [first, end] }) => {
      const left = leftAt(folded.kept, folded.age, end, last);
      return {
        transferId,
        at,
        from,
        ml,
        liquidIds: kept.steps
          .slice(first, end + 1)
          .flatMap((step) => (step.kind === "add" ? [step.liquidId] : [])),
        left,
        leftMl: ml * left,
        halfLifeDays: bySteps.get(end)?.halfLife ?? null,
      };
    }),
    pours: kept.pours,
    pouredMl: kept.pouredMl,
    course: courseOf(folded, kept, points, liquids, ages, now),
    now: shownContents(shelf, contentsOfVessel(shelf.state, vessel.id)),
  };
}
