import type { Handlers } from "../handler.ts";
import { checkRecipe } from "./check-recipe.ts";
import { fillRecipe } from "./fill-recipe.ts";
import { loosenRecipe } from "./loosen-recipe.ts";

/** Recipe files need no household: the file and the shelf have all they ask for. */
export const fillHandlers: Handlers<"fillRecipe" | "checkRecipe" | "loosenRules"> = {
  fillRecipe: async ({ body }) => fillRecipe(body),
  loosenRules: async ({ body }) => loosenRecipe(body),
  checkRecipe: ({ body }) => checkRecipe(body),
};
