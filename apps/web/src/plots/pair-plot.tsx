import { scaleLinear } from "d3-scale";
import { PlotAxis } from "./plot-axis.tsx";
import { printRank } from "./print-rank.ts";
import "./plots.css";

export interface PairPlotProps {
  /** The finding in a sentence. */
  readonly title: string;
  readonly glasses: number;
  /** What the ring and the dot stand for. */
  readonly once?: string;
  readonly again?: string;
  readonly pairs: readonly { readonly taster: string; readonly first: number; readonly second: number }[];
}

/** The two ranks that each taster gave one whiskey poured twice, joined: the shorter the line, the steadier the taster. */
export function PairPlot({
  title,
  glasses,
  pairs,
  once = "first pour",
  again = "second pour",
}: PairPlotProps) {
  const x = scaleLinear().domain([1, glasses]).range([4, 96]);
  const at = (rank: number): string => `${x(rank)}%`;
  const ticks = Array.from({ length: glasses }, (_, i) => i + 1);
  return (
    <figure className="plot">
      <figcaption className="plot-title">{title}</figcaption>
      <div className="plot-rows">
        <PlotAxis ticks={ticks} at={at} />
        <ul>
          {pairs.map(({ taster, first, second }) => (
            <li className="plot-row" key={taster}>
              <p className="plot-label">
                <span>{taster}</span>
                <span className="plot-value">
                  {printRank(first)} and {printRank(second)}
                </span>
              </p>
              <svg className="plot-strip" style={{ height: 34 }} aria-hidden="true">
                {ticks.map((tick) => (
                  <line key={tick} x1={at(tick)} x2={at(tick)} y1="0" y2="100%" className="plot-grid" />
                ))}
                <line x1={at(first)} x2={at(second)} y1="50%" y2="50%" className="plot-join" />
                <circle cx={at(first)} cy="50%" r="7" className="plot-open" />
                <circle cx={at(second)} cy="50%" r={first === second ? 3.5 : 7} className="plot-full" />
              </svg>
            </li>
          ))}
        </ul>
      </div>
      <p className="plot-key" aria-hidden="true">
        <svg viewBox="0 0 24 24" width="24" height="24">
          <circle cx="12" cy="12" r="7" className="plot-open" />
        </svg>
        {once}
        <svg viewBox="0 0 24 24" width="24" height="24">
          <circle cx="12" cy="12" r="7" className="plot-full" />
        </svg>
        {again}
      </p>
    </figure>
  );
}
