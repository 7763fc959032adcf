export { findRecipes, type Watch } from "./find-recipes.ts";
export { searchHandlers } from "./search-handlers.ts";
