import { z } from "zod";
import { Traded } from "./search-answer.ts";
import { SearchProblem, SearchQuery, SearchTarget, SearchWhiskey } from "./search.ts";

export const TradeOffQuery = SearchQuery.extend({ of: Traded });

/** One more bottle of a list, for the problem's target or for several. Each candidate is searched for by itself. */
export const PurchasesDraft = z.strictObject({
  problem: SearchProblem,
  targets: z.array(SearchTarget).min(1).max(10).optional(),
  candidates: z.array(SearchWhiskey).max(60),
});
export type PurchasesDraft = z.infer<typeof PurchasesDraft>;
