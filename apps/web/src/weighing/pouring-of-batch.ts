import type { BatchPlan, Vessel } from "@partsproof/house/protocol";
import type { Pouring, Source } from "./pouring.ts";

type FromPlan = Pick<Pouring, "parts" | "sources">;

/**
 * A batch's plan as parts and bottles. Each part is planned at all that the recipe asks, though its bottles hold less by the book:
 * the scale will tell. `missing` names parts of which there is no bottle at all.
 */
export function pouringOfBatch(
  plan: BatchPlan,
  vessels: ReadonlyMap<string, Vessel>,
): FromPlan & { readonly missing: readonly string[] } {
  const steps = plan.steps.filter(({ slot, ml }) => slot !== null && ml > 0);
  const sources = steps.flatMap((step, part) =>
    step.pours.map((pour): Source => {
      const vessel = pour.from.kind === "vessel" ? vessels.get(pour.from.vesselId) : undefined;
      const haveMl = vessel === undefined ? null : Math.max(0, vessel.contents.volumeMl - vessel.keptMl);
      return { label: pour.label, part, abv20: vessel?.contents.abv20 ?? 0, from: pour.from, haveMl };
    }),
  );
  return {
    parts: steps.map(({ label, ml }) => ({ label, plannedMl: ml })),
    sources,
    missing: steps.filter(({ pours }) => pours.length === 0).map(({ label }) => label),
  };
}
