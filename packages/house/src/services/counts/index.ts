export { countsHandlers } from "./counts.ts";
