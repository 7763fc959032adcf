import type { FoundRecipe } from "@partsproof/core/blending";

/** Where a new recipe begins with these parts. */
export function recipeAddress(household: string, parts: FoundRecipe["parts"], target: string): string {
  const lines = parts.map((line) => `${line.parts}*${line.id}`).join(",");
  const towards = target === "" ? "" : `&towards=${target}`;
  return `/h/${household}/recipes/new?found=${lines}${towards}`;
}
