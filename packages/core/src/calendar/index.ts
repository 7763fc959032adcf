export { writeCalendar } from "./write-calendar.ts";
export { instantOnClock } from "./instant-on-clock.ts";
export { clockChanges } from "./clock-changes.ts";
export type { ClockChange } from "./clock-changes.ts";
export type { Calendar, CalendarEvent, OnClock } from "./event.ts";
