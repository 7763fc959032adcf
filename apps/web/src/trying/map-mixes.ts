import type { Parts } from "@partsproof/core/learning";

/** Steps from one corner of the map to another. */
const MAP_STEPS = 10;

interface MapMix {
  readonly parts: Parts;
  /** Whole steps of each corner, which come to `MAP_STEPS`. */
  readonly steps: readonly [number, number, number];
}

/** Every mix of three whiskeys in tenths, row by row from the first corner down. */
export function mapMixes([a, b, c]: readonly [string, string, string]): readonly MapMix[] {
  return Array.from({ length: MAP_STEPS + 1 }, (_, row) =>
    Array.from({ length: row + 1 }, (__, along): MapMix => {
      const steps = [MAP_STEPS - row, row - along, along] as const;
      return { steps, parts: { [a]: steps[0], [b]: steps[1], [c]: steps[2] } };
    }),
  ).flat();
}
