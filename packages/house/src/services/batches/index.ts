export { batchState, restDue } from "./batch-shown.ts";
export { batchHandlers } from "./batches.ts";
export { makeHandlers } from "./make.ts";
export { planHandlers } from "./plan.ts";
export { isStock, stockOf, takeFrom } from "./plan-stock.ts";
export { shownReduction } from "./reduction.ts";
