export { profileHandlers } from "./boards.ts";
