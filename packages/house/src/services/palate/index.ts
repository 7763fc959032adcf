export { palateHandlers } from "./handlers.ts";
export { type LearnedHere, learnedHere, learnedShelf, levelsOf, readPalate } from "./learned-here.ts";
