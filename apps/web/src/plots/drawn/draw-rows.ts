import type { Drawing, Shape } from "./drawing.ts";
import { isWide } from "./drawing.ts";

interface Row {
  readonly label: string;
  /** Beside the label: the number. */
  readonly value: string;
}

interface Frame {
  /** From and to, of the strip. */
  readonly left: number;
  readonly right: number;
  readonly middle: number;
}

const LABEL = 352;
const STRIP = 34;

/** As much of a label as there is room for; the table has all of it. */
export function fitted(label: string, width: number, size: number): string {
  const most = Math.floor(width / (size * 0.53));
  return label.length <= most ? label : `${label.slice(0, Math.max(1, most - 1)).trimEnd()}…`;
}

/** Rows of labels and strips: labels above the strip on a phone, beside it on a page. */
export function drawRows<R extends Row>(
  rows: readonly R[],
  width: number,
  strip: (row: R, frame: Frame) => readonly Shape[],
  ticks: (left: number, right: number) => readonly { readonly x: number; readonly says: string }[],
): Drawing {
  const wide = isWide(width);
  const [left, right] = wide ? [LABEL + 16, width - 16] : [10, width - 10];
  const top = 22;
  const each = wide ? STRIP : STRIP + 24;
  const height = top + rows.length * each + 4;
  const marks = ticks(left, right);
  const grid = marks.flatMap(({ x, says }): Shape[] => {
    // A long number over the first or the last line stands at the edge: it is not cut off there.
    const half = 4 * says.length;
    const [at, anchor] =
      x + half > width
        ? ([width, "end"] as const)
        : x < half
          ? ([0, "start"] as const)
          : ([x, "middle"] as const);
    return [
      { kind: "text", at: [at, 13], says, tone: "soft", anchor, size: 13 },
      { kind: "line", from: [x, top], to: [x, height - 4], tone: "line" },
    ];
  });
  const drawn = rows.flatMap((row, i): Shape[] => {
    const y = top + i * each;
    const middle = y + each - STRIP / 2;
    const room = (wide ? LABEL : width) - row.value.length * 8 - 20;
    const base = wide ? middle + 5 : y + 16;
    return [
      { kind: "text", at: [0, base], says: fitted(row.label, room, 14), tone: "ink", size: 14 },
      {
        kind: "text",
        at: [wide ? LABEL : width, base],
        says: row.value,
        tone: "ink",
        anchor: "end",
        size: 14,
        strong: true,
      },
      ...strip(row, { left, right, middle }),
    ];
  });
  return { width, height, shapes: [...grid, ...drawn] };
}
