import type { BodyRead, ShelfProblem } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { House } from "../ports.ts";
import { refuse } from "../refuse.ts";
import { learnedMixing, readMixing } from "../mixing/index.ts";
import { learnedHere, learnedShelf } from "../palate/index.ts";
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

async function read(house: House, household: string, body: BodyRead<"searchShelf">): Promise<ShelfProblem> {
  const { currency, shelf, noted } = await house.store.transaction(async (records) => ({
    currency: (await knownHousehold(records, household)).currency,
    shelf: await shelfState(records, household),
    noted: await readMixing(house, records, household),
  }));
  const { attributes } = await learnedMixing(house, shelf, noted);
  const learned = body.levels === "learned" ? learnedHere(house, shelf, noted) : null;
  const from = learned === null || learned.sheets.length === 0 ? null : learned;
  const asked = problemOf(from === null ? shelf : learnedShelf(shelf, from), currency, body, attributes);
  needWeight(asked);
  return from === null ? asked : { ...asked, levels: { from: "learned", notes: from.sheets.length } };
}

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
