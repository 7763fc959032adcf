/** The day of an instant on a zone's clock: "2031-05-04". */
export const dayOn = (zone: string, at: string): string =>
  new Intl.DateTimeFormat("sv-SE", { timeZone: zone, dateStyle: "short" }).format(new Date(at));

/** The same day in words: "4 May 2031". */
export const dayWords = (zone: string, at: string): string =>
  new Intl.DateTimeFormat("en-GB", { timeZone: zone, dateStyle: "long" }).format(new Date(at));
