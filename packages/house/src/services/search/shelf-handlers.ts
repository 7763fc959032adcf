import type { BodyRead, ShelfProblem } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { House } from "../ports.ts";
import { refuse } from "../refuse.ts";
import { shelfState } from "../shelf/index.ts";
import { searchingOf } from "./search-handlers.ts";
import { problemOf } from "./shelf-problem.ts";

/** Searches among a household's whiskeys. The shelf is read first and let go: no search keeps a transaction open. */
export const shelfSearchHandlers: Handlers<"searchShelf" | "shelfProblem"> = {
  searchShelf: async ({ house, at, body, query: { seconds }, signal }) => {
    const { problem, candidates: _, ...labels } = await read(house, at.household, body);
    const answer = await searchingOf(house).answer({ kind: "recipes", problem }, { seconds, signal });
    return { ...answer, ...labels, target: problem.target, shares: problem.shares ?? "volume" };
  },

  shelfProblem: ({ house, at, body }) => read(house, at.household, body),
};

const read = (house: House, household: string, body: BodyRead<"searchShelf">): Promise<ShelfProblem> =>
  house.store.transaction(async (records) => {
    const { currency } = await knownHousehold(records, household);
    const asked = problemOf(await shelfState(records, household), currency, body);
    needWeight(asked);
    return asked;
  });

/** All weights at 0 leave nothing to come close to. */
function needWeight({ problem: { target } }: ShelfProblem): void {
  const { profile, weights } = target;
  if (Object.keys(profile).some((attribute) => (weights?.[attribute] ?? 1) > 0)) return;
  refuse(422, {
    code: "weights_all_zero",
    path: ["weights"],
    limit: "one weight above 0",
    received: 0,
    message: "weights requires one weight above 0, got all zero",
  });
}
