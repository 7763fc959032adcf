import { expect, test } from "vitest";
import { streamShape, type StreamPoint } from "./stream-shape.ts";

const place = { left: 0, right: 100, top: 0, bottom: 100, from: 0, until: 100, mostMl: 100 };

test("what is held stays until something is moved: outlines go in steps, and close", () => {
  const points: StreamPoint[] = [
    { at: 0, ml: 50, parts: [1, 0] },
    { at: 40, ml: 100, parts: [0.5, 0.5] },
  ];
  expect(streamShape(points, 2, place)).toEqual({
    paths: ["M0 50H40V50H100V100H40V100H0Z", "M0 50H40V0H100V50H40V50H0Z"],
    drawn: 2,
  });
});

/** Ten years of a bottle that is poured from and topped up. */
const years = (count: number): StreamPoint[] =>
  Array.from({ length: count }, (_, i) => ({
    at: (i / count) * 100,
    ml: 60 + 30 * Math.sin(i / 3) + (i % 7),
    parts: Array.from({ length: 8 }, (_unused, layer) => 0.05 + (layer === i % 8 ? 0.6 : 0)),
  }));

test("no more points than pixels have use for; no boundary is off by more than half a pixel at its own column", () => {
  const points = years(2000);
  // They end in the middle, so that the last of them is seen by itself.
  const { paths, drawn } = streamShape(points, 8, { ...place, until: 200 });
  expect(paths).toHaveLength(8);
  expect(drawn).toBeLessThanOrEqual(4 * 51);
  // The last outline that the eye sees is that of the last point.
  const last = points.at(-1) as StreamPoint;
  const top = 100 - last.ml * last.parts.reduce((sum, part) => sum + part, 0);
  const edges = (paths[7] ?? "").match(/V(-?[\d.]+)H100V/)?.[1];
  expect(Math.abs(Number(edges) - top)).toBeLessThan(0.5);
});
