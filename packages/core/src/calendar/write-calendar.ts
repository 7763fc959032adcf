import { DAY_MS } from "../quantity/index.ts";
import { escaped, folded } from "./content-lines.ts";
import type { Calendar, CalendarEvent } from "./event.ts";
import { dayOf, instantOnClock } from "./instant-on-clock.ts";
import { clockDigits, zoneLines } from "./zone-lines.ts";

/** The zone is written out for so long before the first and after the last time. */
const AROUND = 370 * DAY_MS;

/**
 * An iCalendar object (RFC 5545): text/calendar, UTF-8, CRLF.
 *
 * Whole days stand without a zone; times stand on the zone's clock with the zone written out. Domain: years 1970 to 9999. Accuracy:
 * instants are those of the platform's zone tables. Source: RFC 5545; RFC 7986 for NAME and REFRESH-INTERVAL. Cost: some ms.
 *
 * @throws RangeError for a zone nobody knows, what is no day or time, or minutes that are not 1 or more
 * @example
 * writeCalendar({ name: "Saltreach", zone: "Europe/Paris", events: [] }).startsWith("BEGIN:VCALENDAR") // true
 */
export function writeCalendar({ name, zone, events }: Calendar): string {
  const instants = events.flatMap(({ on }) => (on.kind === "time" ? [instantOnClock(zone, on.start)] : []));
  const zoned =
    instants.length === 0
      ? (instantOnClock(zone, { date: "2000-01-01", time: "00:00" }), [])
      : zoneLines(zone, Math.min(...instants) - AROUND, Math.max(...instants) + AROUND);
  return folded([
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Parts & Proof//Calendar//EN",
    "CALSCALE:GREGORIAN",
    `NAME:${escaped(name)}`,
    `X-WR-CALNAME:${escaped(name)}`,
    "REFRESH-INTERVAL;VALUE=DURATION:PT6H",
    ...zoned,
    ...events.flatMap((event) => eventLines(event, zone)),
    "END:VCALENDAR",
  ]);
}

function eventLines({ uid, changedAt, words, more, on }: CalendarEvent, zone: string): string[] {
  if (on.kind === "time" && !(Number.isInteger(on.minutes) && on.minutes >= 1))
    throw new RangeError(`an event requires 1 minute or more, got ${on.minutes}`);
  return [
    "BEGIN:VEVENT",
    `UID:${escaped(uid)}`,
    `DTSTAMP:${clockDigits(changedAt.getTime())}Z`,
    ...(on.kind === "day"
      ? [
          `DTSTART;VALUE=DATE:${clockDigits(dayOf(on.date)).slice(0, 8)}`,
          `DTEND;VALUE=DATE:${clockDigits(dayOf(on.date) + DAY_MS).slice(0, 8)}`,
          "TRANSP:TRANSPARENT",
        ]
      : [
          `DTSTART;TZID=${zone}:${on.start.date.replaceAll("-", "")}T${on.start.time.replace(":", "")}00`,
          `DURATION:PT${on.minutes}M`,
        ]),
    `SUMMARY:${escaped(words)}`,
    ...(more === undefined || more === "" ? [] : [`DESCRIPTION:${escaped(more)}`]),
    "END:VEVENT",
  ];
}
