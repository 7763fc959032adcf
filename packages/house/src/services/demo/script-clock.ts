import { DAY_MS } from "@partsproof/core/quantity";
import type { Clock } from "../ports.ts";

/** So many days before the load, at this time of day, UTC. */
export type When = readonly [daysAgo: number, time: `${number}:${number}`];

export interface ScriptClock extends Clock {
  /** Moves on to a moment of the diary; never back, so one that has passed meanwhile is now. */
  goTo(when: When): void;
  /** Moves on by a little, so that ids drawn one after the other also sort so. */
  moveOn(seconds: number): void;
}

/** A clock that tells the diary's past instead of now. */
export function scriptClock(now: Date): ScriptClock {
  const midnight = Math.floor(now.getTime() / DAY_MS) * DAY_MS;
  let time = Number.NEGATIVE_INFINITY;
  return {
    now: () => new Date(time),
    goTo: ([daysAgo, clock]) => {
      const [hours, minutes] = clock.split(":").map(Number);
      const to = midnight - daysAgo * DAY_MS + ((hours ?? 0) * 60 + (minutes ?? 0)) * 60_000;
      time = Math.max(time, to);
    },
    moveOn: (seconds) => {
      time += seconds * 1000;
    },
  };
}
