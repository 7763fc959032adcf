import { parseRule, printRule } from "@partsproof/core/slots";
import { type RecipeCheck, RecipeFile } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import { canonicalJson } from "./canonical-json.ts";

const hex = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");

/** A recipe file's canonical form and hash, its rules as the language prints them, and which of its fields are not known here. */
export async function checkRecipe(recipe: RecipeFile): Promise<RecipeCheck> {
  const canonical = canonicalOf(recipe);
  const bytes = new TextEncoder().encode(canonical);
  const digest = await crypto.subtle.digest("SHA-256", bytes);
  const known = Object.keys(RecipeFile.shape);
  return {
    name: recipe.name,
    version: recipe.version,
    sha256: hex(new Uint8Array(digest)),
    bytes: bytes.length,
    rules: recipe.slots.map(({ rule }) => (rule === undefined ? null : printed(rule))),
    unknownFields: Object.keys(recipe).filter((name) => !known.includes(name)),
    canonical,
  };
}

function canonicalOf(recipe: RecipeFile): string {
  try {
    return canonicalJson(recipe);
  } catch {
    return refuse(422, {
      code: "text_not_unicode",
      path: [],
      limit: "whole Unicode characters",
      received: null,
      message: "a recipe file requires whole Unicode characters, got half of one",
    });
  }
}

/** The rule in the one way it prints; the schema has read it before. */
export function printed(text: string): string {
  const parsed = parseRule(text);
  return parsed.ok ? printRule(parsed.rule) : text;
}
