export { profileHandlers } from "./boards.ts";
export { type AllObserved, observed } from "./observed.ts";
export { keptProfile, mixedOf } from "./predicted.ts";
export { LEVEL } from "./profile-lines.ts";
export { revealedSayings, type Saying } from "./revealed-sayings.ts";
