import { scaleLinear } from "d3-scale";
import { memo, type ReactNode } from "react";
import { PlotAxis } from "./plot-axis.tsx";
import { Scrolled } from "./scrolled.tsx";
import "./plots.css";

export interface DotRow {
  readonly key: string;
  readonly label: ReactNode;
  /** By series, 0 to 10; null where there is none. The first is what the others are measured against. */
  readonly values: readonly (number | null)[];
}

export interface DotPlotProps {
  /** The finding in a sentence. */
  readonly title: string;
  readonly series: readonly string[];
  readonly rows: readonly DotRow[];
  /** One series, drawn as dots, with no key. */
  readonly alone?: boolean;
}

const TICKS = [0, 2, 4, 6, 8, 10];
const x = scaleLinear().domain([0, 10]).range([3, 97]);
const at = (value: number): string => `${x(value)}%`;
const said = (value: number | null): string => (value === null ? "not known" : value.toFixed(1));

/** Intensities of 0 to 10 side by side: what is sought as a ring, what is predicted as a dot and a square, joined. */
export const DotPlot = memo(function DotPlot({ title, series, rows, alone = false }: DotPlotProps) {
  return (
    <figure className="plot dots">
      <figcaption className="plot-title">{title}</figcaption>
      <div className="plot-rows" aria-hidden="true">
        <PlotAxis ticks={TICKS} at={at} />
        {rows.map((row) => (
          <Row key={row.key} row={row} alone={alone} />
        ))}
      </div>
      <p className="plot-key" aria-hidden="true" hidden={alone}>
        {series.map((name, n) => (
          <span key={name} className="dots-key">
            <svg viewBox="0 0 24 24" width="24" height="24">
              <Mark series={n} x="12" y="12" />
            </svg>
            {name}
          </span>
        ))}
      </p>
      <details className="plot-table">
        <summary>The same as a table</summary>
        <Scrolled>
          <table>
            <thead>
              <tr>
                <th scope="col">0 to 10</th>
                {series.map((name) => (
                  <th scope="col" key={name}>
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, label, values }) => (
                <tr key={key}>
                  <th scope="row">{label}</th>
                  {values.map((value, n) => (
                    <td key={series[n]}>{said(value)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolled>
      </details>
    </figure>
  );
});

/** Drawn anew only when it is another row: whoever has many of them may change some at a time. */
const Row = memo(function Row({ row, alone }: { readonly row: DotRow; readonly alone: boolean }) {
  const { label, values } = row;
  const known = values.filter((value) => value !== null);
  return (
    <div className="plot-row">
      <p className="plot-label">{label}</p>
      <div>
        <div className="dots-way">
          <svg className="plot-strip">
            <line x1={at(0)} x2={at(10)} y1="50%" y2="50%" className="plot-grid" />
            <line
              x1={at(Math.min(...known))}
              x2={at(Math.max(...known))}
              y1="50%"
              y2="50%"
              className="plot-span"
            />
            {values.map((value, n) =>
              // oxlint-disable-next-line react/no-array-index-key -- a series is known by its place
              value === null ? null : <Mark key={n} series={alone ? 1 : n} x={at(value)} y="50%" />,
            )}
          </svg>
        </div>
      </div>
    </div>
  );
});

/** Told apart by shape: a ring, a dot, a square. */
function Mark({ series, x: cx, y: cy }: { readonly series: number; readonly x: string; readonly y: string }) {
  if (series === 0) return <circle cx={cx} cy={cy} r="9" className="dots-sought" />;
  if (series === 1) return <circle cx={cx} cy={cy} r="5.5" className="dots-found" />;
  return (
    <svg x={cx} y={cy} overflow="visible">
      <rect x="-5" y="-5" width="10" height="10" className="dots-beside" />
    </svg>
  );
}
