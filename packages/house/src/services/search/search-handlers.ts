import type { PurchasesDraft } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import type { House } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { Searching } from "../searching.ts";
import { searchingHere } from "./answer-here.ts";

/** The house's threads, or this one where it has none, as a reckoner has no house. */
export const searchingOf = (house: House | null): Searching => house?.searching ?? searchingHere;

type Routes = "search" | "searchTradeOff" | "searchRules" | "searchPurchases";

/** Searches that need no household: the problem has all they ask for. */
export const searchHandlers: Handlers<Routes> = {
  search: ({ house, body, query: { seconds }, signal }) =>
    searchingOf(house).answer({ kind: "recipes", problem: body }, { seconds, signal }),

  searchTradeOff: ({ house, body, query: { seconds, of }, signal }) =>
    searchingOf(house).answer({ kind: "tradeOff", problem: body, of }, { seconds, signal }),

  searchRules: ({ house, body, query: { seconds }, signal }) =>
    searchingOf(house).answer({ kind: "rulePrices", problem: body }, { seconds, signal }),

  searchPurchases: async ({ house, body, query: { seconds }, signal }) => {
    needOthers(body);
    return searchingOf(house).answer({ kind: "purchases", ...body }, { seconds, signal });
  },
};

/** A candidate is not on the shelf yet, and stands in the list once. */
function needOthers({ problem, candidates }: PurchasesDraft): void {
  const there = new Set(problem.whiskeys.map(({ id }) => id));
  for (const [n, { id }] of candidates.entries()) {
    if (there.has(id))
      refuse(422, {
        code: "candidate_there",
        path: ["candidates", n, "id"],
        limit: "an id that is not on the shelf and stands once among the candidates",
        received: id,
        message: `a candidate requires an id that is not on the shelf and stands once among the candidates, got ${id}`,
      });
    there.add(id);
  }
}
