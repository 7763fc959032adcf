export interface PlotAxisProps {
  readonly ticks: readonly number[];
  /** Where a tick stands, as a CSS length. */
  readonly at: (tick: number) => string;
}

/** The ticks above the rows of a plot; the rows say their numbers themselves. */
export function PlotAxis({ ticks, at }: PlotAxisProps) {
  return (
    <div className="plot-axis" aria-hidden="true">
      <span />
      <div className="plot-scale">
        {ticks.map((tick) => (
          <span key={tick} style={{ left: at(tick) }}>
            {tick}
          </span>
        ))}
      </div>
    </div>
  );
}
