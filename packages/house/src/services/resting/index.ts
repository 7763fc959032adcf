export { adviceOf } from "./advice-of.ts";
export { beginHandlers } from "./begin-rest.ts";
export { checkHandlers } from "./checks.ts";
export { oakInHandlers } from "./put-oak.ts";
export { oakOutHandlers } from "./take-oak-out.ts";
export { readerOf, wholeRests } from "./read-rests.ts";
export { restHandlers } from "./rests.ts";
export { startOf, type WholeRest } from "./shown-rest.ts";
