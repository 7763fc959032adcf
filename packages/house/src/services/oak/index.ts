export { doseOf } from "./dose.ts";
export { oakHandlers } from "./handlers.ts";
export { restOf } from "./rest.ts";
