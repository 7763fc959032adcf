export { oakHandlers } from "./handlers.ts";
