export { evidenceHandlers } from "./evidence-handlers.ts";
