import { DAY_MS } from "@partsproof/core/quantity";
const dayFormat = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" });
const timeFormat = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
});

/** "3 Sept 2026", in the reader's time zone. */
export function printDay(instant: string): string {
  return dayFormat.format(new Date(instant));
}

/** "3 Sept, 21:04". */
export function printMoment(instant: string): string {
  return timeFormat.format(new Date(instant));
}

/** Whole days from one instant to another, the part of a day cut off; below 0 when `to` is earlier. */
export function daysBetween(from: string | number, to: string | number): number {
  return Math.trunc((new Date(to).getTime() - new Date(from).getTime()) / DAY_MS);
}

/** "today", "in 3 days", "3 days ago": by calendar days in the reader's time zone. */
export function fromNow(instant: string, now: number): string {
  const start = (ms: number): number => new Date(ms).setHours(0, 0, 0, 0);
  const days = Math.round((start(new Date(instant).getTime()) - start(now)) / DAY_MS);
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  if (days === -1) return "yesterday";
  return days > 0 ? `in ${countDays(days)}` : `${countDays(-days)} ago`;
}

export function countDays(days: number): string {
  return days === 1 ? "1 day" : `${days} days`;
}
