import { scaleLinear } from "d3-scale";
import { drawRows } from "./draw-rows.ts";
import type { Drawing, Shape } from "./drawing.ts";

export interface ForetoldRow {
  readonly label: string;
  readonly said: string;
  /** A dot on a thick line. */
  readonly noted: { readonly mean: number; readonly low: number; readonly high: number };
  /** A ring above it. */
  readonly plain: number;
  /** An upright stroke through both. */
  readonly law: number;
}

/** How far the dot lies below and the ring above the middle of their strip. */
const APART = 7;
/** How far the stroke goes to both sides of it. */
const STROKE = 13;

/** What was noted of each thing from 0 to 10, what one rule foretold of it and what another did. */
export function drawForetold(rows: readonly ForetoldRow[], width: number): Drawing {
  const scale = scaleLinear().domain([0, 10]);
  return drawRows(
    rows.map((row) => ({ ...row, value: row.said })),
    width,
    ({ noted, plain, law }, { left, right, middle }): Shape[] => {
      const x = scale.copy().range([left, right]);
      return [
        {
          kind: "line",
          from: [x(law), middle - STROKE],
          to: [x(law), middle + STROKE],
          tone: "ink",
          width: 3,
        },
        {
          kind: "line",
          from: [x(noted.low), middle + APART],
          to: [x(noted.high), middle + APART],
          tone: "edge",
          width: 4,
        },
        { kind: "dot", at: [x(plain), middle - APART], r: 6, tone: "ink", ring: true },
        { kind: "dot", at: [x(noted.mean), middle + APART], r: 6, tone: "fill" },
      ];
    },
    (left, right) => {
      const x = scale.copy().range([left, right]);
      return [0, 2, 4, 6, 8, 10].map((tick) => ({ x: x(tick), says: String(tick) }));
    },
  );
}
