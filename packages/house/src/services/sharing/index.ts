export { sharingHandlers } from "./handlers.ts";
