import { expect, test } from "vitest";
import { parseArea, parseSize } from "./index.ts";

test("an area is square centimetres, whatever it was written in", () => {
  for (const [text, cm2] of [
    ["66cm2", 66],
    ["66 cm²", 66],
    ["66", 66],
    ["6600 mm2", 66],
    ["10 in2", 64.516],
    ["0,5 dm2", 50],
  ] as const)
    expect(parseArea(text)).toEqual({ ok: true, value: cm2 });
  for (const text of ["66 cm", "", "-1 cm2", "66 ml", "20000 cm2", "1,000 cm2"])
    expect(parseArea(text)).toMatchObject({ ok: false, issue: { received: text } });
});

test("a size is lengths in one unit, which must be said", () => {
  expect(parseSize("10x10x160mm", 3)).toEqual({ ok: true, value: [1, 1, 16] });
  expect(parseSize("1 x 1 × 16 cm", 3)).toEqual({ ok: true, value: [1, 1, 16] });
  expect(parseSize("3x25x100 MM", 3)).toEqual({ ok: true, value: [0.3, 2.5, 10] });
  for (const text of ["10x10x160", "10x10mm", "axbxc mm", "", "10x10x-1mm", "1ft x 2 x 3"])
    expect(parseSize(text, 3)).toMatchObject({ ok: false, issue: { code: "size_unreadable" } });
});
