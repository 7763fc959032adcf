import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { StreamPlot } from "../apps/web/src/plots/stream-plot.tsx";
import { streamShape } from "../apps/web/src/plots/stream-shape.ts";

const LAYERS = 8;
/** As many points as a kept-up bottle's ten years are sampled at. */
const POINTS = 400;

const points = Array.from({ length: POINTS }, (_, i) => ({
  at: (i / POINTS) * 100,
  ml: 60 + 30 * Math.sin(i / 3) + (i % 7),
  parts: Array.from({ length: LAYERS }, (__, layer) => 0.05 + (layer === i % LAYERS ? 0.6 : 0)),
}));
const layers = Array.from({ length: LAYERS }, (_, i) => ({ key: String(i), label: `Whiskey ${i}` }));
const place = { left: 46, right: 712, top: 14, bottom: 234, from: 0, until: 100, mostMl: 100 };

/** The outlines alone; how long their text is. */
export const outlined = (): number => streamShape(points, LAYERS, place).paths.join("").length;

/** The whole figure as the page has it; how long its text is. */
export const drawn = (): number =>
  renderToStaticMarkup(
    createElement(StreamPlot, {
      title: "Ten years",
      layers,
      points,
      capacityMl: 100,
      until: 100,
      ticks: [],
      width: 720,
    }),
  ).length;
