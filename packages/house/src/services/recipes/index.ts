export { previewHandlers } from "./preview.ts";
export { knownRecipe, recipeHandlers, shownRecipe, versionOf } from "./recipes.ts";
export { type SlotLiquid, slotLiquids } from "./slot-liquid.ts";
