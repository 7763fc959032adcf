export { DotPlot } from "./dot-plot.tsx";
export { PairPlot } from "./pair-plot.tsx";
export { RankPlot } from "./rank-plot.tsx";
