export { evidenceHandlers } from "./evidence-handlers.ts";
export type { FlightEvidence } from "./flight-evidence.ts";
export { revealedEvidence } from "./revealed-evidence.ts";
export { ofLiking } from "./evidence-lines.ts";
export { rankingsOf } from "./rankings-of.ts";
