import type { Handlers } from "../handler.ts";
import { trialPlanOf } from "./plan.ts";

/** Bench trials without a household: nothing is asked of the house. */
export const trialHandlers: Handlers<"planTrials"> = {
  planTrials: async ({ body }) => trialPlanOf(body),
};
