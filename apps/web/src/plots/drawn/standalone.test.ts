import { expect, test } from "vitest";
import { drawBoard } from "./draw-board.ts";
import { drawIntervals } from "./draw-intervals.ts";
import { drawMap } from "./draw-map.ts";
import { drawRibbons } from "./draw-ribbons.ts";
import { drawDumbbells } from "./draw-dumbbells.ts";
import { csvOf, standaloneSvg } from "./standalone.ts";
import { WIDTHS } from "./drawing.ts";

test("a file of values keeps commas, quotes and lines, and starts no formula (RFC 4180)", () => {
  expect(
    csvOf({
      heads: ["Glass", "Worth"],
      rows: [
        ['Wick, "first"', "-0.4"],
        ["=1+1", "−0.4"],
      ],
    }),
  ).toBe('Glass,Worth\r\n"Wick, ""first""",-0.4\r\n\'=1+1,−0.4\r\n');
});

test("a drawing in a file of its own holds no markup that a name brought along", () => {
  const rows = [{ label: "<script>&", value: 1, low: 0, high: 2, said: "1" }];
  const svg = standaloneSvg(drawIntervals(rows, WIDTHS.wide), "A < B", "5 sheets");
  expect(svg).not.toMatch(/<script/);
  expect(svg).toContain("A &lt; B");
  expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
});

test("every figure stays within its width, at a phone's and at a page's", () => {
  const names = Array.from({ length: 9 }, (_, i) => `A whiskey with a long name, release ${i}`);
  for (const width of Object.values(WIDTHS)) {
    const drawings = [
      drawIntervals(
        names.map((label, i) => ({ label, value: i, low: i - 3, high: i + 2, said: "1.0" })),
        width,
      ),
      drawRibbons(
        names.map((label) => ({ label, said: "2.1", ranks: names.map(() => 1 / 9) })),
        width,
      ),
      drawDumbbells(
        names.map((label) => ({ label, said: "1, 4", one: 1, other: 4 })),
        width,
        [1, 9],
      ),
      drawBoard(
        names,
        names.map((_, i) => names.map((__, j) => (i + j) % 4)),
        width,
      ),
      drawMap(
        names.map((label, i) => ({
          mark: String(i),
          label,
          x: i,
          y: i % 3,
          ellipse: { along: 2, across: 1, turn: 0.5 },
        })),
        width,
      ),
    ];
    const outside = drawings.flatMap(({ shapes, height }) =>
      shapes.filter((shape) => {
        if (shape.kind === "line") return shape.from[0] < -0.5 || shape.to[0] > width + 0.5;
        if (shape.kind !== "dot") return false;
        const [x, y] = shape.at;
        return x - shape.r < -0.5 || x + shape.r > width + 0.5 || y + shape.r > height + 1;
      }),
    );
    expect(outside).toEqual([]);
  }
});
