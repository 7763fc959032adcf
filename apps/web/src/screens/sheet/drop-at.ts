/** Where a dragged glass would land: alone before a place, or level with one. */
export type Drop =
  | { readonly kind: "between"; readonly before: number }
  | { readonly kind: "level"; readonly at: number };

interface Box {
  readonly top: number;
  readonly bottom: number;
}

/** The middle of a place means level with it; its upper and lower quarter, and the gaps, mean before or after it. */
export function dropAt(places: readonly Box[], y: number): Drop {
  for (const [i, { top, bottom }] of places.entries()) {
    const quarter = (bottom - top) / 4;
    if (y < top + quarter) return { kind: "between", before: i };
    if (y <= bottom - quarter) return { kind: "level", at: i };
  }
  return { kind: "between", before: places.length };
}
