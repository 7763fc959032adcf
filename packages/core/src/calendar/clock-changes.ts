import { DAY_MS } from "../quantity/index.ts";
import { offsetAt } from "./offset-at.ts";

/** The clock of a zone is put forward or back. Offsets are seconds ahead of UTC. */
export interface ClockChange {
  readonly at: number;
  readonly before: number;
  readonly after: number;
}

/**
 * Every change of a zone's clock between two instants (milliseconds since 1970).
 *
 * Looked for day by day and then to the second: two changes within a day that cancel each other are not seen; no zone has had such.
 *
 * @throws RangeError for a zone nobody knows
 * @example clockChanges("Europe/Paris", Date.UTC(2031, 0), Date.UTC(2031, 6)).length // 1
 */
export function clockChanges(zone: string, from: number, to: number): ClockChange[] {
  const changes: ClockChange[] = [];
  let [day, before] = [from, offsetAt(zone, from)];
  while (day < to) {
    const next = Math.min(day + DAY_MS, to);
    const after = offsetAt(zone, next);
    if (after !== before) {
      let [low, high] = [day, next];
      while (high - low > 1000) {
        const middle = Math.floor((low + high) / 2000) * 1000;
        if (middle <= low) break;
        if (offsetAt(zone, middle) === before) low = middle;
        else high = middle;
      }
      changes.push({ at: Math.ceil(high / 1000) * 1000, before, after });
    }
    [day, before] = [next, after];
  }
  return changes;
}
