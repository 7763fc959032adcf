import type { FoundRecipe } from "@partsproof/core/blending";
import { listed, printParts } from "../../figures/index.ts";

/** "2 parts A and 1 part B". */
export const partsWords = (recipe: Pick<FoundRecipe, "parts">, nameOf: (id: string) => string): string =>
  listed(recipe.parts.map(({ id, parts }) => `${printParts(parts)} ${nameOf(id)}`));
