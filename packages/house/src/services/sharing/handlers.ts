import type { Handlers } from "../handler.ts";
import { openShared } from "./open-shared.ts";
import { shareRecipe } from "./share-recipe.ts";

/** Neither asks anything of a household: the recipe file has all of it. */
export const sharingHandlers: Handlers<"shareRecipe" | "openRecipe"> = {
  shareRecipe: ({ body }) => shareRecipe(body),
  openRecipe: ({ body }) => openShared(body.text),
};
