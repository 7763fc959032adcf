import { scaleLinear } from "d3-scale";
import type { Drawing, Shape } from "./drawing.ts";
import { drawRows } from "./draw-rows.ts";

export interface DumbbellRow {
  readonly label: string;
  readonly said: string;
  /** The ring and the dot, joined. */
  readonly one: number;
  readonly other: number;
}

/** Two values of each thing, joined: the one a ring, the other a dot. */
export function drawDumbbells(
  rows: readonly DumbbellRow[],
  width: number,
  domain: readonly [number, number],
): Drawing {
  const scale = scaleLinear().domain(domain);
  return drawRows(
    rows.map((row) => ({ ...row, value: row.said })),
    width,
    ({ one, other }, { left, right, middle }): Shape[] => {
      const x = scale.copy().range([left, right]);
      return [
        { kind: "line", from: [x(one), middle], to: [x(other), middle], tone: "edge", width: 4 },
        { kind: "dot", at: [x(one), middle], r: 8, tone: "ink", ring: true },
        { kind: "dot", at: [x(other), middle], r: one === other ? 4 : 7, tone: "fill" },
      ];
    },
    (left, right) => {
      const x = scale.copy().range([left, right]);
      const whole = x.ticks(6).filter(Number.isInteger);
      return whole.map((tick) => ({ x: x(tick), says: String(tick) }));
    },
  );
}
