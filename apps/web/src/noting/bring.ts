/** Strengths by "section/attribute". */
type Strengths = ReadonlyMap<string, number>;

/**
 * What is to be written, so that strengths that the words gave follow the words. One that is not as the words last gave it was set or
 * taken back by hand: it stays as it is, whatever the words say now.
 *
 * @param stands what stands on the sheet
 * @param gave what the words gave before
 * @param gives what they give now
 */
export function bring(
  stands: (key: string) => number | null,
  gave: Strengths,
  gives: Strengths,
): ReadonlyMap<string, number | null> {
  const changes = new Map<string, number | null>();
  for (const key of new Set([...gave.keys(), ...gives.keys()])) {
    const before = gave.get(key) ?? null;
    const now = gives.get(key) ?? null;
    if (before !== now && stands(key) === before) changes.set(key, now);
  }
  return changes;
}
