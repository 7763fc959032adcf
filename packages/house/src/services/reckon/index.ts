export { reckonHandlers } from "./reckon.ts";
