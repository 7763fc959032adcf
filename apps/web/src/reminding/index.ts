export { useReminders } from "./use-reminders.ts";
