import type { Drawing, Shape } from "./drawing.ts";

const part = (shape: Shape, key: number) => {
  switch (shape.kind) {
    case "line":
      return (
        <line
          key={key}
          className={`drawn-line-${shape.tone}`}
          x1={shape.from[0]}
          y1={shape.from[1]}
          x2={shape.to[0]}
          y2={shape.to[1]}
          strokeWidth={shape.width ?? 1}
        />
      );
    case "dot":
      return (
        <circle
          key={key}
          className={shape.ring === true ? "drawn-ring" : `drawn-${shape.tone}`}
          cx={shape.at[0]}
          cy={shape.at[1]}
          r={shape.r}
        />
      );
    case "oval":
      return (
        <ellipse
          key={key}
          className="drawn-oval"
          cx={shape.at[0]}
          cy={shape.at[1]}
          rx={shape.r[0]}
          ry={shape.r[1]}
          transform={`rotate(${shape.turn} ${shape.at[0]} ${shape.at[1]})`}
        />
      );
    case "area":
      return (
        <polygon
          key={key}
          className={shape.tone === "fill" ? "drawn-fill" : "drawn-band"}
          points={shape.points.map(([x, y]) => `${x},${y}`).join(" ")}
        />
      );
    case "text":
      return (
        <text
          key={key}
          className={`drawn-text-${shape.tone}${shape.strong === true ? " drawn-strong" : ""}`}
          x={shape.at[0]}
          y={shape.at[1]}
          textAnchor={shape.anchor ?? "start"}
          fontSize={shape.size ?? 14}
        >
          {shape.says}
        </text>
      );
  }
};

/** Shapes on the screen, in its theme; a reader has the table instead. */
export function DrawFigure({ drawing }: { readonly drawing: Drawing }) {
  return (
    <svg className="drawn" viewBox={`0 0 ${drawing.width} ${drawing.height}`} aria-hidden="true">
      {drawing.shapes.map(part)}
    </svg>
  );
}
