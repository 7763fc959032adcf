export { learningHandlers } from "./handlers.ts";
