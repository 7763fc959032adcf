export { noteHandlers } from "./read.ts";
