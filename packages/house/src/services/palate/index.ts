export { palateHandlers } from "./handlers.ts";
export { learnedHere, levelsOf, readPalate } from "./learned-here.ts";
