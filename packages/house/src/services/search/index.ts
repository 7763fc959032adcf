export { answerHere } from "./answer-here.ts";
export { searchHandlers } from "./search-handlers.ts";
export { shelfSearchHandlers } from "./shelf-handlers.ts";
