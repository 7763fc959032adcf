export { calendarHandlers } from "./calendar.ts";
export { feedHandlers } from "./feed.ts";
export { linkHandlers } from "./links.ts";
