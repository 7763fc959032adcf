export { exportRecipeHandlers } from "./export-recipe.ts";
export { fillShelfHandlers } from "./fill-shelf.ts";
export { resultMadeHandlers } from "./result-made.ts";
export { resultHandlers } from "./take-in-result.ts";
export { takeInHandlers } from "./take-in.ts";
