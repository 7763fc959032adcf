/** The mark found at each place, by index; null where none is entered. */
export type MarksAt = readonly (string | null)[];

export function placeWith(found: MarksAt, mark: string): number | null {
  const place = found.indexOf(mark);
  return place === -1 ? null : place;
}

/** Enters a mark at a place; a mark stands once, so it leaves where it stood. */
export function withMark(found: MarksAt, place: number, mark: string): MarksAt {
  return found.map((old, i) => (i === place ? mark : old === mark ? null : old));
}
