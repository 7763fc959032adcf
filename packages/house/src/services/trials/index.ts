export { trialHandlers } from "./handlers.ts";
export { trialSetHandlers } from "./set-handlers.ts";
