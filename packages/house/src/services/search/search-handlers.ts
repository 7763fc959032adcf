import type { Handlers } from "../handler.ts";
import { findRecipes } from "./find-recipes.ts";

/** Searches that need no household: the problem has all they ask for. */
export const searchHandlers: Handlers<"search"> = {
  search: ({ body, query, signal }) => findRecipes(body, { seconds: query.seconds, signal }),
};
