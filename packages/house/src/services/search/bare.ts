/** A record with nothing but its own entries, so that an attribute may be called "constructor". */
export const bare = <T>(record: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
  Object.assign(Object.create(null) as Record<string, T>, record);
