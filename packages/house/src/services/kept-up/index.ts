export { keptUpHandlers } from "./handlers.ts";
