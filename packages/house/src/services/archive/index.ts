export { wrappingKey } from "./wrapping-key.ts";
export { exportHandlers } from "./export.ts";
export { restoreHandlers } from "./restore.ts";
