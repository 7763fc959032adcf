import type { Read } from "./flag.ts";
import { unread } from "./read-number.ts";

/** A day of the calendar, such as 2026-11-12; one that there is. */
export const readDay: Read<string> = (text) => {
  const day = text.trim();
  const at = Date.parse(`${day}T00:00:00.000Z`);
  const there = /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(at);
  if (there && new Date(at).toISOString().startsWith(day)) return { ok: true, value: day };
  return unread("day", "day_unreadable", "a day such as 2026-11-12", text);
};
