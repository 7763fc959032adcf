import { scaleLinear } from "d3-scale";
import type { ReactNode } from "react";
import { PlotAxis } from "./plot-axis.tsx";
import { printRank } from "./print-rank.ts";
import { stackDots, tallest } from "./stack-dots.ts";
import { Scrolled } from "./scrolled.tsx";
import "./plots.css";

export interface RankRow {
  readonly key: string;
  readonly label: ReactNode;
  readonly mean: number;
  readonly ranks: readonly { readonly taster: string; readonly rank: number }[];
}

export interface RankPlotProps {
  /** The finding in a sentence. */
  readonly title: string;
  /** Best first. */
  readonly rows: readonly RankRow[];
  /** How many glasses were ranked: the worst rank there is. */
  readonly glasses: number;
}

const DOT = 5;

/** Mean ranks as large dots, each sheet's rank as a small one, the span between them as a line; best at the left. */
export function RankPlot({ title, rows, glasses }: RankPlotProps) {
  const x = scaleLinear().domain([1, glasses]).range([4, 96]);
  const at = (rank: number): string => `${x(rank)}%`;
  const ticks = Array.from({ length: glasses }, (_, i) => i + 1);
  return (
    <figure className="plot">
      <figcaption className="plot-title">{title}</figcaption>
      <div className="plot-rows" aria-hidden="true">
        <PlotAxis ticks={ticks} at={at} />
        {rows.map((row) => {
          const dots = stackDots(row.ranks, ({ rank }) => rank);
          const height = (tallest(dots) * 2 + 1) * (2 * DOT + 2) + 18;
          const all = row.ranks.map(({ rank }) => rank);
          return (
            <div className="plot-row" key={row.key}>
              <p className="plot-label">
                <span>{row.label}</span>
                <span className="plot-value">{printRank(row.mean)}</span>
              </p>
              <svg className="plot-strip" style={{ height }}>
                {ticks.map((tick) => (
                  <line key={tick} x1={at(tick)} x2={at(tick)} y1="0" y2="100%" className="plot-grid" />
                ))}
                <line
                  x1={at(Math.min(...all))}
                  x2={at(Math.max(...all))}
                  y1="50%"
                  y2="50%"
                  className="plot-span"
                />
                <circle cx={at(row.mean)} cy="50%" r="10" className="plot-mean" />
                {dots.map(({ item, step }) => (
                  <circle
                    key={item.taster}
                    cx={at(item.rank)}
                    cy={height / 2 - step * (2 * DOT + 2)}
                    r={DOT}
                    className="plot-dot"
                  />
                ))}
              </svg>
            </div>
          );
        })}
        <p className="plot-ends">
          <span>← best</span>
          <span>last →</span>
        </p>
      </div>
      <p className="plot-key" aria-hidden="true">
        <svg viewBox="0 0 24 24" width="24" height="24">
          <circle cx="12" cy="12" r="10" className="plot-mean" />
        </svg>
        mean rank
        <svg viewBox="0 0 24 24" width="24" height="24">
          <circle cx="12" cy="12" r={DOT} className="plot-dot" />
        </svg>
        one sheet’s rank
      </p>
      <details className="plot-table">
        <summary>The ranks as a table</summary>
        <Scrolled>
          <table>
            <thead>
              <tr>
                <th scope="col">Glass</th>
                <th scope="col">Mean rank</th>
                {rows[0]?.ranks.map(({ taster }) => (
                  <th scope="col" key={taster}>
                    {taster}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.key}>
                  <th scope="row">{row.label}</th>
                  <td>{printRank(row.mean)}</td>
                  {row.ranks.map(({ taster, rank }) => (
                    <td key={taster}>{printRank(rank)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolled>
      </details>
    </figure>
  );
}
