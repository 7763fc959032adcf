import type { Cupboard } from "./cupboard.ts";
import type { Plan } from "./plan.ts";

/** So many glasses are chosen by an address at most; more can be added by hand. */
const MOST = 10;

/**
 * A plan as an address proposes it, "pour=vessel,vessel&towards=whiskey:id": vessels that are not on the shelf any more are left out.
 */
export function proposedPlan(
  plan: Plan,
  query: URLSearchParams,
  { pourables, names }: Pick<Cupboard, "pourables" | "names">,
): Plan {
  const wanted = [...new Set(query.get("pour")?.split(",") ?? [])];
  const there = wanted.filter((id) => pourables.some(({ vesselId }) => vesselId === id)).slice(0, MOST);
  if (there.length === 0) return plan;
  const towards = query.get("towards");
  const poured = pourables.filter(({ vesselId }) => there.includes(vesselId));
  const isPoured = towards !== null && names.has(towards) && poured.some(({ nameId }) => nameId === towards);
  return {
    ...plan,
    question: isPoured ? "how_close" : plan.question,
    pours: there.map((vesselId) => ({ vesselId, glasses: 1 })),
    targetNameId: isPoured ? towards : plan.targetNameId,
  };
}
