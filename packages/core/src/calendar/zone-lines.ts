import { type ClockChange, clockChanges } from "./clock-changes.ts";
import { offsetAt } from "./offset-at.ts";

/** "20310330T020000" of milliseconds that are read as a clock. */
export const clockDigits = (wall: number): string =>
  new Date(wall).toISOString().slice(0, 19).replaceAll(/[-:]/g, "");

function offsetDigits(seconds: number): string {
  const sign = seconds < 0 ? "-" : "+";
  const all = Math.abs(seconds);
  const two = (n: number): string => String(n).padStart(2, "0");
  const rest = all % 60;
  return `${sign}${two(Math.floor(all / 3600))}${two(Math.floor(all / 60) % 60)}${rest === 0 ? "" : two(rest)}`;
}

/**
 * VTIMEZONE of a zone from one instant to another: what the clock is at the start, and every change of it, each written out, so that a
 * reader needs no table of its own (RFC 5545, 3.6.5).
 */
export function zoneLines(zone: string, from: number, to: number): string[] {
  const first = offsetAt(zone, from);
  const changes = clockChanges(zone, from, to);
  const least = Math.min(first, ...changes.map(({ after }) => after));
  const start: ClockChange = { at: from, before: first, after: first };
  return [
    "BEGIN:VTIMEZONE",
    `TZID:${zone}`,
    ...[start, ...changes].flatMap(({ at, before, after }) => {
      // The smaller offset is a zone's standard time but for places that have it the other way round, where it does no harm.
      const name = after > least ? "DAYLIGHT" : "STANDARD";
      return [
        `BEGIN:${name}`,
        // By the clock as it was before the change.
        `DTSTART:${clockDigits(at + before * 1000)}`,
        `TZOFFSETFROM:${offsetDigits(before)}`,
        `TZOFFSETTO:${offsetDigits(after)}`,
        `END:${name}`,
      ];
    }),
    "END:VTIMEZONE",
  ];
}
