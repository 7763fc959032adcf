export { joinHandlers } from "./join.ts";
export { openJoiningHandlers } from "./open-joining.ts";
export { followHandlers, watchHandlers } from "./watch.ts";
