import { scaleLinear } from "d3-scale";
import type { Drawing, Point } from "./drawing.ts";
import { drawRows } from "./draw-rows.ts";

export interface RibbonRow {
  readonly label: string;
  readonly said: string;
  /** Probability of each place, first place first. */
  readonly ranks: readonly number[];
}

const HALF = 14;

/** One ribbon a thing over the places it may be in: as thick as the place is probable. */
export function drawRibbons(rows: readonly RibbonRow[], width: number): Drawing {
  const places = rows[0]?.ranks.length ?? 1;
  const x = scaleLinear().domain([1, Math.max(2, places)]);
  return drawRows(
    rows.map((row) => ({ ...row, value: row.said })),
    width,
    ({ ranks }, { left, right, middle }) => {
      const at = x.copy().range([left + 6, right - 6]);
      const upper = ranks.map((p, i): Point => [at(i + 1), middle - Math.max(0.4, p * HALF)]);
      const lower = ranks.map((p, i): Point => [at(i + 1), middle + Math.max(0.4, p * HALF)]);
      return [{ kind: "area", points: [...upper, ...lower.toReversed()], tone: "fill" }];
    },
    (left, right) => {
      const at = x.copy().range([left + 6, right - 6]);
      const step = Math.ceil(places / 10);
      return Array.from({ length: places }, (_, i) => i + 1)
        .filter((place) => (place - 1) % step === 0)
        .map((place) => ({ x: at(place), says: String(place) }));
    },
  );
}
