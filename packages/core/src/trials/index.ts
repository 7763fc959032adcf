export { simplexCentroid, simplexLattice, aboveLow } from "./lattice.ts";
export { corners, keeps } from "./region.ts";
export type { Bound } from "./region.ts";
export { chooseRuns, logDeterminantOf } from "./choose-runs.ts";
export type { RunsChosen, RunsWanted } from "./choose-runs.ts";
export type { Criterion } from "./exchange.ts";
export { pourInSteps } from "./pour-steps.ts";
export type { PouredTrial, PourLimits } from "./pour-steps.ts";
