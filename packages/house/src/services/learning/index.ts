export { learningHandlers, triedHandlers } from "./handlers.ts";
