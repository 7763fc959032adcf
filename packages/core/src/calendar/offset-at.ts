const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known !== undefined) return known;
  try {
    const made = new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric",
    });
    formats.set(zone, made);
    return made;
  } catch {
    throw new RangeError(`a zone requires a name the platform knows, such as Europe/Paris, got ${zone}`);
  }
}

/** Seconds that a zone's clock is ahead of UTC at an instant (milliseconds since 1970). @throws RangeError for a zone nobody knows */
export function offsetAt(zone: string, instant: number): number {
  const at = Object.fromEntries(
    formatOf(zone)
      .formatToParts(instant)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = at;
  return Math.round(
    (Date.UTC(year, month - 1, day, hour, minute, second) - Math.floor(instant / 1000) * 1000) / 1000,
  );
}
