import { scaleLinear } from "d3-scale";
import { drawRows } from "./draw-rows.ts";
import type { Drawing, Shape } from "./drawing.ts";

interface Reach {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

export interface AgainstRow {
  readonly label: string;
  readonly said: string;
  /** A ring on a thin line; null where it is not known. */
  readonly one: Reach | null;
  /** A dot on a thick line; null where it is not known. */
  readonly other: Reach | null;
  /** An upright stroke beside the dot: a plain mean, say. */
  readonly mark?: number | null;
}

/** How far the two lie above and below the middle of their strip, so that neither hides the other. */
const APART = 7;

/** Two values of each thing from 0 to 10, each with its interval: the one a ring above, the other a dot below; the unknown is not drawn. */
export function drawAgainst(rows: readonly AgainstRow[], width: number): Drawing {
  const scale = scaleLinear().domain([0, 10]);
  return drawRows(
    rows.map((row) => ({ ...row, value: row.said })),
    width,
    ({ one, other, mark = null }, { left, right, middle }): Shape[] => {
      const x = scale.copy().range([left, right]);
      const [above, below] =
        one !== null && other !== null ? [middle - APART, middle + APART] : [middle, middle];
      const reach = ({ low, high }: Reach, y: number, size: number): Shape => ({
        kind: "line",
        from: [x(low), y],
        to: [x(high), y],
        tone: "edge",
        width: size,
      });
      return [
        ...(one === null ? [] : [reach(one, above, 2)]),
        ...(other === null ? [] : [reach(other, below, 4)]),
        ...(one === null
          ? []
          : [{ kind: "dot", at: [x(one.mean), above], r: 6, tone: "ink", ring: true } as const]),
        ...(other === null ? [] : [{ kind: "dot", at: [x(other.mean), below], r: 6, tone: "fill" } as const]),
        ...(mark === null
          ? []
          : [
              {
                kind: "line",
                from: [x(mark), below - 7],
                to: [x(mark), below + 7],
                tone: "ink",
                width: 3,
              } as const,
            ]),
      ];
    },
    (left, right) => {
      const x = scale.copy().range([left, right]);
      return [0, 2, 4, 6, 8, 10].map((tick) => ({ x: x(tick), says: String(tick) }));
    },
  );
}
