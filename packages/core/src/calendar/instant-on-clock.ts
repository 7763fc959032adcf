import { DAY_MS } from "../quantity/index.ts";
import type { OnClock } from "./event.ts";
import { offsetAt } from "./offset-at.ts";

/**
 * The instant (milliseconds since 1970) of a time on a zone's clock. One that the clock skips is taken with the offset before the
 * change, and one that comes twice is its first (RFC 5545, 3.3.5).
 *
 * @throws RangeError for a zone nobody knows, or what is no day or time
 * @example instantOnClock("Europe/Paris", { date: "2031-07-14", time: "19:30" }) // 17:30 UTC
 */
export function instantOnClock(zone: string, { date, time }: OnClock): number {
  const day = dayOf(date);
  const parts = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(time);
  if (parts === null) throw new RangeError(`a time requires 00:00 to 23:59, got ${time}`);
  const wall = day + (Number(parts[1]) * 60 + Number(parts[2])) * 60_000;
  // The offsets before and after: a day on either side of it, as no clock changes twice within two.
  const [before, after] = [offsetAt(zone, wall - DAY_MS), offsetAt(zone, wall + DAY_MS)];
  const fits = [before, after]
    .map((offset) => ({ offset, at: wall - offset * 1000 }))
    .filter(({ offset, at }) => offsetAt(zone, at) === offset);
  return Math.min(...(fits.length > 0 ? fits.map(({ at }) => at) : [wall - before * 1000]));
}

/** Midnight UTC of a day written as 2031-03-30. @throws RangeError for what is no day */
export function dayOf(date: string): number {
  const at = /^\d{4}-\d\d-\d\d$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : Number.NaN;
  if (Number.isNaN(at) || new Date(at).toISOString().slice(0, 10) !== date)
    throw new RangeError(`a date requires a day such as 2031-03-30, got ${date}`);
  return at;
}
