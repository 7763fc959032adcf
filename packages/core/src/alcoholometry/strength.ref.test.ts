import { expect, test } from "vitest";
import { abv20 } from "../quantity/index.ts";
import { proof60FFromAbv20 } from "./proof.ts";

// Tables 1, 5 and 6 of the US Gauging Manual have reference tests of their own: us-table-*.ref.test.ts.

test("A5: 40 % vol at 20 °C is 39.931 % by volume at 60 °F, not 40", () => {
  expect(proof60FFromAbv20(abv20(40)) / 2).toBeCloseTo(39.931, 3);
});
