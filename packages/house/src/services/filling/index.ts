export { canonicalHash } from "./canonical-hash.ts";
export { canonicalJson } from "./canonical-json.ts";
export { checkRecipe, printed } from "./check-recipe.ts";
export { fillHandlers } from "./fill-handlers.ts";
export { fillRecipe } from "./fill-recipe.ts";
export { loosenRecipe } from "./loosen-recipe.ts";
export { originalOf } from "./original-of.ts";
export { unknownFields } from "./unknown-fields.ts";
