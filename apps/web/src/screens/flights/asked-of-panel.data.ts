import type { Risks } from "@partsproof/core/sensory";

/** 1 in 20 to find what is not there, 1 in 5 to miss what is. Common practice, no source. */
export const RISKS: Risks = { alpha: 0.05, beta: 0.2 };
/** What is to be found: half of the tasters put the right one first, or can tell. Common practice, no source. */
export const SHARE_PERCENT = 50;
/** Two glasses side by side put the same way again so often. Common practice, no source. */
export const AGAIN_PERCENT = 80;
