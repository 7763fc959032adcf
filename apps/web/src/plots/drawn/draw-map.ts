import { type Drawing, isWide, type Shape } from "./drawing.ts";
import { fitted } from "./draw-rows.ts";

export interface MapItem {
  /** A number, or a number and a letter, to find it by. */
  readonly mark: string;
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly ellipse: { readonly along: number; readonly across: number; readonly turn: number } | null;
}

/** How far an ellipse reaches from its middle along each axis. */
function reach({ ellipse }: MapItem): readonly [number, number] {
  if (ellipse === null) return [0, 0];
  const [c, s] = [Math.cos(ellipse.turn), Math.sin(ellipse.turn)];
  return [
    Math.hypot(ellipse.along * c, ellipse.across * s),
    Math.hypot(ellipse.along * s, ellipse.across * c),
  ];
}

/** Things where their profiles put them, marked, each with the ellipse that says how sure that is; one scale both ways. */
export function drawMap(items: readonly MapItem[], width: number): Drawing {
  const spans = items.map((item) => reach(item));
  const span = (axis: 0 | 1, of: (item: MapItem) => number): readonly [number, number] => [
    Math.min(...items.map((item, i) => of(item) - (spans[i]?.[axis] ?? 0))),
    Math.max(...items.map((item, i) => of(item) + (spans[i]?.[axis] ?? 0))),
  ];
  const [x0, x1] = span(0, ({ x }) => x);
  const [y0, y1] = span(1, ({ y }) => y);
  const scale = Math.min((width - 24) / (x1 - x0), (width * (isWide(width) ? 0.55 : 0.9)) / (y1 - y0));
  const square = { width: width, height: (y1 - y0) * scale + 24 };
  const left = (width - (x1 - x0) * scale) / 2;
  const at = (x: number, y: number) => [left + (x - x0) * scale, 12 + (y1 - y) * scale] as const;
  const line = 22;
  const listed = items.toSorted((a, b) => a.mark.localeCompare(b.mark, "en", { numeric: true }));
  const key = listed.map(
    ({ mark, label }, i): Shape => ({
      kind: "text",
      at: [0, square.height + (i + 1) * line],
      says: fitted(`${mark} ${label}`, width - 8, 14),
      tone: "ink",
      size: 14,
    }),
  );
  const ovals = items.flatMap(({ x, y, ellipse }): Shape[] =>
    ellipse === null
      ? []
      : [
          {
            kind: "oval",
            at: at(x, y),
            r: [ellipse.along * scale, ellipse.across * scale],
            turn: (-ellipse.turn * 180) / Math.PI,
            tone: "edge",
          },
        ],
  );
  const dots = items.flatMap(({ mark, x, y }): Shape[] => {
    const [px, py] = at(x, y);
    return [
      { kind: "dot", at: [px, py], r: 12, tone: "fill" },
      {
        kind: "text",
        at: [px, py + 5],
        says: mark,
        tone: "ink",
        anchor: "middle",
        size: 14,
        strong: true,
      },
    ];
  });
  return {
    width,
    height: square.height + items.length * line + 10,
    shapes: [...ovals, ...dots, ...key],
  };
}
