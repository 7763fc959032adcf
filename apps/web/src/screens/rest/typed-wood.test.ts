import { describe, expect, test } from "vitest";
import { doseSeen, readWood, type TypedWood } from "./typed-wood.ts";

const typed = (some: Partial<TypedWood>): TypedWood => ({
  shape: "stick",
  size: "10x10x160mm",
  area: "",
  count: 1,
  grams: "",
  ...some,
});

describe("wood as it is typed", () => {
  test("a stick of 1 × 1 × 16 cm has 66 cm², in 750 mL 88 cm² a litre (geometry)", () => {
    const read = readWood(typed({}));
    if (!read.ok) throw new Error(read.issue.message);
    expect(read.wood).toEqual({ piece: { shape: "stick", cm: [1, 1, 16] }, count: 1 });
    expect(doseSeen(read.wood, 750)?.areaPerLitre).toBeCloseTo(88, 9);
  });

  test.each([
    [
      { shape: "cube", size: "1 cm" },
      { piece: { shape: "cube", cm: [1, 1, 1] }, count: 1 },
    ],
    [
      { shape: "chips", size: "5x3x2mm", grams: "4,5" },
      { piece: { shape: "chips", cm: [0.5, 0.3, 0.2], grams: 4.5 } },
    ],
    [{ shape: "area", area: "66" }, { areaCm2: 66 }],
  ] as const)("%o", (some, wood) => {
    expect(readWood(typed(some))).toEqual({ ok: true, wood });
  });

  test.each([
    [{ size: "long" }, "piece"],
    [{ shape: "chips", size: "5x3x2mm" }, "grams"],
    [{ shape: "area", area: "0" }, "areaCm2"],
    [{ grams: "-1" }, "grams"],
  ] as const)("what cannot be read is said at its field: %o", (some, path) => {
    const read = readWood(typed(some));
    expect(read.ok ? null : read.issue.path).toEqual([path]);
  });

  test("a body that cannot be has no dose yet", () => {
    expect(
      doseSeen({ piece: { shape: "spiral", outer: 2, core: 3, fin: 0.3, pitch: 0.8, length: 10 } }, 750),
    ).toBeNull();
  });
});
