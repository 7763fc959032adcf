export { noteHandlers, noteHereHandlers } from "./read.ts";
export { readerFor } from "./reader-for.ts";
