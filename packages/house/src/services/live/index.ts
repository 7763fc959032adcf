export { eventsOf, happened, lastSeq } from "./happened.ts";
export { hubOf } from "./hub.ts";
