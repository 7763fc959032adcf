import { contentsOfVessel } from "@partsproof/core/ledger";
import type { TrialPlan, TrialsAsked } from "../../protocol/index.ts";
import { stockOf } from "../batches/index.ts";
import { slotLiquids } from "../recipes/index.ts";
import { type Shelf, shownContents } from "../shelf/index.ts";
import { trialPlanOf } from "./plan.ts";

/** B1: the plan of a set, its parts as they are on the shelf now: a bottle at the strength of what is in it, else of its label. */
export function planHere(shelf: Shelf, asked: TrialsAsked): TrialPlan {
  const liquidOf = slotLiquids(shelf);
  const parts = asked.parts.map(({ of, low, high }) => {
    const liquid = liquidOf(of);
    const [vessel] = stockOf(shelf, of);
    const held = vessel === undefined ? liquid.of(1) : contentsOfVessel(shelf.state, vessel.id);
    const { abv20 } = shownContents(shelf, held);
    return {
      name: liquid.label,
      ...(abv20 === null ? {} : { strength: { basis: "abv20" as const, value: abv20 } }),
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
    };
  });
  return trialPlanOf({ ...asked, parts });
}
