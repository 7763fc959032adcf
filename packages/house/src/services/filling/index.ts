export { fillHandlers } from "./fill-handlers.ts";
