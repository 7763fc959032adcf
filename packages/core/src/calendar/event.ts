/** A time on a clock: "2031-03-30" and "19:30". */
export interface OnClock {
  readonly date: string;
  readonly time: string;
}

/** Something to be put into a calendar. */
export interface CalendarEvent {
  /** The same for ever, so that a later calendar changes the event and adds none. */
  readonly uid: string;
  /** When it was last changed, UTC: the instant of the row it came from. */
  readonly changedAt: Date;
  readonly words: string;
  readonly more?: string;
  /** A whole day, or a time on the zone's clock with its minutes. */
  readonly on:
    | { readonly kind: "day"; readonly date: string }
    | { readonly kind: "time"; readonly start: OnClock; readonly minutes: number };
}

export interface Calendar {
  readonly name: string;
  /** IANA name of the place's clock, such as "Europe/Paris". */
  readonly zone: string;
  readonly events: readonly CalendarEvent[];
}
