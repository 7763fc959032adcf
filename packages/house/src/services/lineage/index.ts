export { lineageHandlers } from "./handlers.ts";
export { playedIn } from "./played-in.ts";
