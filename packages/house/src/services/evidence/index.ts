export { evidenceHandlers } from "./evidence-handlers.ts";
export type { FlightEvidence } from "./flight-evidence.ts";
export { revealedEvidence } from "./revealed-evidence.ts";
