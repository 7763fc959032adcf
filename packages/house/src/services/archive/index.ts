export { exportHandlers } from "./export.ts";
export { restoreHandlers } from "./restore.ts";
