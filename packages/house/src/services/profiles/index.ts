export { profileHandlers } from "./boards.ts";
export { observed } from "./observed.ts";
export { keptProfile } from "./predicted.ts";
export { revealedSayings } from "./revealed-sayings.ts";
