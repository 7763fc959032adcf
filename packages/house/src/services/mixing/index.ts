export { mixingHandlers } from "./handlers.ts";
export { learnedMixing, readMixing } from "./learned-here.ts";
