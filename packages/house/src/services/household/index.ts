export { householdHandlers, shownHousehold } from "./households.ts";
export { nextHandlers } from "./next.ts";
export { tasterHandlers } from "./tasters.ts";
