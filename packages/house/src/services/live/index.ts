export { eventsOf, happened, lastSeq } from "./happened.ts";
export { type Follower, hubOf } from "./hub.ts";
