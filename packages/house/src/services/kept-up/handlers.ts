import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { unknownId } from "../refuse.ts";
import { searchingOf } from "../search/index.ts";
import { shelfState } from "../shelf/index.ts";
import { keptUpOf } from "./kept-up-of.ts";
import { nextAsked, nextShown } from "./next-addition.ts";

export const keptUpHandlers: Handlers<"getKeptUp" | "nextAddition"> = {
  getKeptUp: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const id = at["vessel"] ?? "";
      const vessel = (await records.find("vessel", at.household, id)) ?? unknownId("vessel", id, ["vessel"]);
      return keptUpOf(await shelfState(records, at.household), vessel, query.points);
    }),

  /** The shelf is read first and let go: no search keeps a transaction open. */
  nextAddition: async ({ house, at, body, query: { seconds }, signal }) => {
    const asked = await house.store.transaction(async (records) => {
      const { currency } = await knownHousehold(records, at.household);
      const id = at["vessel"] ?? "";
      const vessel = (await records.find("vessel", at.household, id)) ?? unknownId("vessel", id, ["vessel"]);
      return nextAsked(await shelfState(records, at.household), currency, vessel, body);
    });
    const answer = await searchingOf(house).answer(
      { kind: "recipes", problem: asked.problem },
      { seconds, signal },
    );
    return nextShown(asked, answer);
  },
};
