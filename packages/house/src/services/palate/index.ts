export { palateHandlers } from "./handlers.ts";
export { type LearnedHere, learnedHere, levelsOf, readPalate } from "./learned-here.ts";
