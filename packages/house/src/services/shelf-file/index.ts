export { shelfFileHandlers } from "./handlers.ts";
