import { useId } from "react";
import { streamShape, type StreamPoint } from "./stream-shape.ts";
import "./stream-plot.css";

export interface StreamLayer {
  readonly key: string;
  readonly label: string;
  readonly water?: boolean;
}

export interface StreamPlotProps {
  /** The finding in a sentence. */
  readonly title: string;
  readonly layers: readonly StreamLayer[];
  readonly points: readonly StreamPoint[];
  readonly capacityMl: number;
  readonly until: number;
  /** Moments in time with how they are written. */
  readonly ticks: readonly { readonly at: number; readonly says: string }[];
  readonly width: number;
}

const HEIGHT = 260;
const LEFT = 46;
const TOP = 14;
const FOOT = 26;
const HATCH = [
  "",
  "M-2 2L2 -2M0 8L8 0M6 10L10 6",
  "M0 2H8M0 6H8",
  "M2 2h.01M6 6h.01",
  "M0 0L8 8M6 -2L10 2M-2 6L2 10",
  "M2 0V8M6 0V8",
];

/** What a vessel held over time, layer on layer, as high as it stood. */
export function StreamPlot({ title, layers, points, capacityMl, until, ticks, width }: StreamPlotProps) {
  const id = useId();
  const [right, bottom] = [width - 8, HEIGHT - FOOT];
  const from = points[0]?.at ?? until - 1;
  const { paths } = streamShape(points, layers.length, {
    left: LEFT,
    right,
    top: TOP,
    bottom,
    from,
    until,
    mostMl: capacityMl,
  });
  const x = (at: number): number => LEFT + ((at - from) / Math.max(1, until - from)) * (right - LEFT);
  return (
    <figure className="plot">
      <figcaption className="plot-title">{title}</figcaption>
      <svg
        className="stream"
        viewBox={`0 0 ${width} ${HEIGHT}`}
        width={width}
        height={HEIGHT}
        aria-hidden="true"
      >
        <defs>
          {layers.map(({ key, water }, i) => (
            <pattern key={key} id={`${id}-${i}`} width="8" height="8" patternUnits="userSpaceOnUse">
              <rect
                width="8"
                height="8"
                style={{ fill: `var(--liquid-${water === true ? "water" : (i % 6) + 1})` }}
              />
              <path
                d={water === true ? "M0 5Q2 3 4 5T8 5" : (HATCH[i % 6] ?? "")}
                className={!water && i % 6 === 3 ? "stream-dots" : "stream-hatch"}
              />
            </pattern>
          ))}
        </defs>
        {[0, 0.5, 1].map((part) => (
          <g key={part}>
            <path d={`M${LEFT} ${bottom - part * (bottom - TOP)}H${right}`} className="stream-line" />
            <text x={LEFT - 6} y={bottom - part * (bottom - TOP) + 4} textAnchor="end">
              {Math.round(part * capacityMl)}
            </text>
          </g>
        ))}
        <text x={LEFT - 6} y={TOP + 16} textAnchor="end" className="stream-soft">
          mL
        </text>
        {layers.map(({ key }, i) => (
          <path key={key} d={paths[i]} fill={`url(#${id}-${i})`} className="stream-edge" />
        ))}
        {ticks.map(({ at, says }, i) => (
          <g key={at}>
            <path d={`M${x(at)} ${bottom}v5`} className="stream-tick" />
            <text
              x={x(at)}
              y={HEIGHT - 6}
              textAnchor={i === 0 ? "start" : i === ticks.length - 1 ? "end" : "middle"}
            >
              {says}
            </text>
          </g>
        ))}
      </svg>
    </figure>
  );
}

/** The square that stands for a layer, hatched as it is in the plot. */
export function StreamKey({ place, water = false }: { readonly place: number; readonly water?: boolean }) {
  const id = useId();
  return (
    <svg className="stream-key" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse">
        <path
          d={water ? "M0 5Q2 3 4 5T8 5" : (HATCH[place % 6] ?? "")}
          className={!water && place % 6 === 3 ? "stream-dots" : "stream-hatch"}
        />
      </pattern>
      <rect width="16" height="16" style={{ fill: `var(--liquid-${water ? "water" : (place % 6) + 1})` }} />
      <rect width="16" height="16" fill={`url(#${id})`} className="stream-edge" />
    </svg>
  );
}
