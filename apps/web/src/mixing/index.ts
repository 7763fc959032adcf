export { LABEL_TOLERANCE } from "./label-tolerance.data.ts";
export { abv20OfStated, reckonRecipe } from "./reckon-recipe.ts";
export {
  factsOf,
  slotKey,
  slotOfKey,
  type Stock,
  stockOfContents,
  stockOfWhiskey,
  type Stocks,
  whiskeyLabel,
} from "./stock.ts";
export { contentsGive, printGive, strengthGive } from "./strength-give.ts";
