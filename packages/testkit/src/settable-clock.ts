import type { Clock } from "@partsproof/house/services";

export interface SettableClock extends Clock {
  set(iso: string): void;
  advance(by: { readonly days?: number; readonly hours?: number; readonly ms?: number }): void;
}

/** A clock that stands still until it is told to move. */
export function settableClock(iso = "2026-11-25T18:00:00.000Z"): SettableClock {
  let now = read(iso);
  return {
    now: () => new Date(now),
    set: (to) => {
      now = read(to);
    },
    advance: ({ days = 0, hours = 0, ms = 0 }) => {
      now += (days * 24 + hours) * 3_600_000 + ms;
    },
  };
}

function read(iso: string): number {
  const time = Date.parse(iso);
  if (Number.isNaN(time)) throw new RangeError(`clock requires an ISO 8601 moment, got ${iso}`);
  return time;
}
