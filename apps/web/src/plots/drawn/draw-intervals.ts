import { scaleLinear } from "d3-scale";
import type { Drawing } from "./drawing.ts";
import { drawRows } from "./draw-rows.ts";

export interface IntervalRow {
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** What is shown beside the label. */
  readonly said: string;
  /** Drawn as a ring: the target. */
  readonly ring?: boolean;
}

/** Dots with their intervals, more to the right. */
export function drawIntervals(
  rows: readonly IntervalRow[],
  width: number,
  domain?: readonly [number, number],
): Drawing {
  const ends = domain ?? [Math.min(...rows.map(({ low }) => low)), Math.max(...rows.map(({ high }) => high))];
  const scale = scaleLinear().domain(ends).nice(4);
  return drawRows(
    rows.map((row) => ({ ...row, value: row.said, at: row.value })),
    width,
    (row, { left, right, middle }) => {
      const x = scale.copy().range([left, right]);
      return [
        { kind: "line", from: [x(row.low), middle], to: [x(row.high), middle], tone: "edge", width: 3 },
        {
          kind: "dot",
          at: [x(row.at), middle],
          r: 7,
          tone: row.ring ? "ink" : "fill",
          ring: row.ring === true,
        },
      ];
    },
    (left, right) => {
      const x = scale.copy().range([left, right]);
      return x.ticks(4).map((tick) => ({ x: x(tick), says: String(tick).replace("-", "−") }));
    },
  );
}
