/** A rest before the next glass, as this phone keeps it: it runs on while the page is closed. */
export interface Rest {
  /** Milliseconds since 1970 at which it is over; null while none runs. */
  readonly until: number | null;
  /** Minutes before each glass; 0 for none. */
  readonly minutes: number;
}

export const REST_MINUTES = [0, 1, 2, 3, 5] as const;
const NONE: Rest = { until: null, minutes: 0 };
const MINUTE_MS = 60_000;

export function readRest(text: string | null): Rest {
  const [, minutes = "", until = ""] = /^([0-5])(?: (\d{1,15}))?$/.exec(text ?? "") ?? [];
  return minutes === "" ? NONE : { minutes: Number(minutes), until: until === "" ? null : Number(until) };
}

export const writeRest = ({ minutes, until }: Rest): string =>
  until === null ? String(minutes) : `${minutes} ${until}`;

/** Before the next glass: it begins, if one is wanted. */
export const begun = (rest: Rest, now: number): Rest => ({
  ...rest,
  until: rest.minutes === 0 ? null : now + rest.minutes * MINUTE_MS,
});

/** Seconds still to go, rounded up; 0 when it is over. A clock that was set back makes no rest longer than it was. */
export function secondsLeft({ until, minutes }: Rest, now: number): number {
  if (until === null) return 0;
  return Math.max(0, Math.ceil(Math.min(until - now, minutes * MINUTE_MS) / 1000));
}

/** "1:05". */
export const clockWords = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
