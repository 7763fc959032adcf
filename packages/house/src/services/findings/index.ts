export { recordHandlers } from "./record.ts";
export { findingHandlers, needRevealed } from "./finding.ts";
export { keptLaw, keptOf } from "./found-agreement.ts";
export { found } from "./found.ts";
export { foundSets } from "./found-sets.ts";
export { luckOf, shortFraction } from "./luck.ts";
export { revealHandlers } from "./reveal.ts";
