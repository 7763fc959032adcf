export { trialHandlers } from "./handlers.ts";
