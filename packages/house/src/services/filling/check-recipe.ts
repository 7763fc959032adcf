import { parseRule, printRule } from "@partsproof/core/slots";
import { type RecipeCheck, RecipeFile } from "../../protocol/index.ts";
import { canonicalHash } from "./canonical-hash.ts";
import { unknownFields } from "./unknown-fields.ts";

/** A recipe file's canonical form and hash, its rules as the language prints them, and which of its fields are not known here. */
export async function checkRecipe(recipe: RecipeFile): Promise<RecipeCheck> {
  return {
    name: recipe.name,
    version: recipe.version,
    ...(await canonicalHash(recipe, "recipe")),
    rules: recipe.slots.map(({ rule }) => (rule === undefined ? null : printed(rule))),
    unknownFields: unknownFields(RecipeFile, recipe),
  };
}

/** The rule in the one way it prints; the schema has read it before. */
export function printed(text: string): string {
  const parsed = parseRule(text);
  return parsed.ok ? printRule(parsed.rule) : text;
}
