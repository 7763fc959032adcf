export { answerHere } from "./answer-here.ts";
export { searchHandlers, searchingOf } from "./search-handlers.ts";
export { shelfSearchHandlers } from "./shelf-handlers.ts";
export { problemOf } from "./shelf-problem.ts";
