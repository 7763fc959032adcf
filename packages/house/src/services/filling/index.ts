export { checkRecipe, printed } from "./check-recipe.ts";
export { exportRecipeHandlers } from "./export-recipe.ts";
export { fillHandlers } from "./fill-handlers.ts";
