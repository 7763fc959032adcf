export { recordHandlers } from "./record.ts";
export { findingHandlers } from "./finding.ts";
export { found } from "./found.ts";
export { revealHandlers } from "./reveal.ts";
