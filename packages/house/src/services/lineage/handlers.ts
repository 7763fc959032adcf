import { revealedEvidence } from "../evidence/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { knownRecipe } from "../recipes/index.ts";
import { shelfState } from "../shelf/index.ts";
import { kinOf, treeOf } from "./tree.ts";

export const lineageHandlers: Handlers<"getLineage"> = {
  getLineage: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      if (query.recipe !== undefined) await knownRecipe(records, at.household, query.recipe, ["recipe"]);
      const tree = treeOf({
        shelf: await shelfState(records, at.household),
        recipes: await records.list("recipe", at.household),
        versions: await records.list("recipeVersion", at.household),
        flights: await revealedEvidence(house, records, at.household),
        now: house.clock.now(),
      });
      return query.recipe === undefined ? tree : kinOf(tree, query.recipe);
    }),
};
