import fc from "fast-check";
import ICAL from "ical.js";
import { expect, test } from "vitest";
import { type CalendarEvent, clockChanges, instantOnClock, writeCalendar } from "./index.ts";

// The reader is ical.js, which shares nothing with the writer.

const ZONES = [
  "UTC",
  "Europe/Paris",
  "Europe/Dublin",
  "America/New_York",
  "America/St_Johns",
  "Asia/Kathmandu",
  "Australia/Lord_Howe",
  "Pacific/Auckland",
  "America/Santiago",
];
const changedAt = new Date("2031-02-03T04:05:06Z");
const timed = (date: string, time: string, words = "Taste again"): CalendarEvent => ({
  uid: `${date}-${time}@partsproof`,
  changedAt,
  words,
  on: { kind: "time", start: { date, time }, minutes: 30 },
});

/** What the independent reader makes of a calendar, with the zones it carries and no others. */
function readBack(text: string): { summary: string; start: Date; end: Date; day: boolean; more: string }[] {
  ICAL.TimezoneService.reset();
  const calendar = new ICAL.Component(ICAL.parse(text));
  for (const zone of calendar.getAllSubcomponents("vtimezone"))
    ICAL.TimezoneService.register(new ICAL.Timezone(zone));
  return calendar.getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    return {
      summary: event.summary,
      start: event.startDate.toJSDate(),
      end: event.endDate.toJSDate(),
      day: event.startDate.isDate,
      more: event.description ?? "",
    };
  });
}

test("I1 I2 an independent reader finds every time at its instant, on both sides of every change of the clock", () => {
  for (const zone of ZONES) {
    const changes = clockChanges(zone, Date.UTC(2031, 0), Date.UTC(2033, 0));
    // Every zone of the list that changes does so four times in two years; those that do not, never.
    expect([0, 4], zone).toContain(changes.length);
    const quiet = [Date.UTC(2031, 5, 1), Date.UTC(2031, 11, 1)].map((at) => ({ at, before: 0, after: 0 }));
    // Two hours and more from a change no time is skipped and none comes twice.
    const events = [...changes, ...quiet].flatMap(({ at, before, after }) =>
      [-30, -2, 2, 30].map((hours) => {
        const wall = new Date(at + (hours < 0 ? before : after) * 1000 + hours * 3_600_000).toISOString();
        return timed(wall.slice(0, 10), wall.slice(11, 16));
      }),
    );
    const found = readBack(writeCalendar({ name: "Saltreach", zone, events }));
    expect(found.length).toBe(events.length);
    for (const [n, { on }] of events.entries()) {
      if (on.kind !== "time") continue;
      const told = instantOnClock(zone, on.start);
      expect({ zone, ...on.start, at: found[n]?.start.toISOString() }).toEqual({
        zone,
        ...on.start,
        at: new Date(told).toISOString(),
      });
      expect((found[n]?.end.getTime() ?? 0) - told).toBe(30 * 60_000);
      // And the platform's own clock shows that time at that instant.
      const shown = new Intl.DateTimeFormat("sv-SE", {
        timeZone: zone,
        dateStyle: "short",
        timeStyle: "short",
      });
      expect(shown.format(told)).toBe(`${on.start.date} ${on.start.time}`);
    }
  }
});

test("I2 changes of the clock in 2026, from the published rules", () => {
  const of = (zone: string): string[] =>
    clockChanges(zone, Date.UTC(2026, 0), Date.UTC(2027, 0)).map(({ at }) => new Date(at).toISOString());
  // EU: last Sundays of March and October, 01:00 UTC (Directive 2000/84/EC).
  expect(of("Europe/Paris")).toEqual(["2026-03-29T01:00:00.000Z", "2026-10-25T01:00:00.000Z"]);
  // US: second Sunday of March and first of November, 02:00 local (15 U.S.C. 260a).
  expect(of("America/New_York")).toEqual(["2026-03-08T07:00:00.000Z", "2026-11-01T06:00:00.000Z"]);
  expect(of("Asia/Kathmandu")).toEqual([]);
});

test("I3 a time that is skipped takes the offset before, one that comes twice is the first", () => {
  const at = (date: string, time: string): string =>
    new Date(instantOnClock("America/New_York", { date, time })).toISOString();
  // RFC 5545, 3.3.5: 02:30 on 2007-03-11 does not exist and is 03:30 EDT; 01:30 on 2007-11-04 is the one of EDT.
  expect(at("2007-03-11", "02:30")).toBe("2007-03-11T07:30:00.000Z");
  expect(at("2007-11-04", "01:30")).toBe("2007-11-04T05:30:00.000Z");
});

test("I4 any words come back as they were; lines are of 75 octets at most and end with CRLF", () => {
  const words = fc.string({ unit: "grapheme", minLength: 1, maxLength: 200 });
  fc.assert(
    fc.property(words, words, (summary, more) => {
      const text = writeCalendar({
        name: summary,
        zone: "Europe/Paris",
        events: [
          { uid: "one@partsproof", changedAt, words: summary, more, on: { kind: "day", date: "2031-05-04" } },
        ],
      });
      expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
      for (const line of text.split("\r\n"))
        expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      const [event] = readBack(text);
      expect(event?.summary).toBe(summary);
      expect(event?.more).toBe(more);
    }),
  );
  const awkward = "a, b; c\\n\nnext line, \u{1F943}".repeat(8);
  const [event] = readBack(
    writeCalendar({ name: "x", zone: "UTC", events: [{ ...timed("2031-05-04", "19:30"), words: awkward }] }),
  );
  expect(event?.summary).toBe(awkward);
});

test("I5 a whole day has no zone and ends with the next", () => {
  const text = writeCalendar({
    name: "Saltreach",
    zone: "Pacific/Auckland",
    events: [{ uid: "d", changedAt, words: "Pull the oak", on: { kind: "day", date: "2032-02-28" } }],
  });
  expect(text).not.toContain("VTIMEZONE");
  expect(text).toContain("DTSTART;VALUE=DATE:20320228\r\nDTEND;VALUE=DATE:20320229\r\n");
  expect(readBack(text)[0]?.day).toBe(true);
});

test("I6 what cannot be is refused with what was received", () => {
  const write = (zone: string, event: CalendarEvent) => writeCalendar({ name: "x", zone, events: [event] });
  expect(() => write("Europe/Saltreach", timed("2031-05-04", "19:30"))).toThrow("got Europe/Saltreach");
  expect(() => writeCalendar({ name: "x", zone: "Nowhere", events: [] })).toThrow("got Nowhere");
  expect(() => write("UTC", timed("2031-02-29", "19:30"))).toThrow("got 2031-02-29");
  expect(() => write("UTC", timed("2031-02-28", "24:30"))).toThrow("got 24:30");
  const short = { ...timed("2031-05-04", "19:30"), on: { ...timed("2031-05-04", "19:30").on, minutes: 0 } };
  expect(() => write("UTC", short as CalendarEvent)).toThrow("1 minute or more, got 0");
});
