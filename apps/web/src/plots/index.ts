export { PairPlot, type PairPlotProps } from "./pair-plot.tsx";
export { RankPlot, type RankPlotProps, type RankRow } from "./rank-plot.tsx";
