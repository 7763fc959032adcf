import { expect, test } from "vitest";
import { codeFits } from "./code-fits.ts";

// A QR code of version v has 17 + 4 v modules a side, and four more at each edge (ISO/IEC 18004, 6.3).
const code = (version: number): string => `<svg viewBox="0 0 ${17 + 4 * version + 8} 0">`;

test("a square code stands on a label only where its modules are large enough", () => {
  expect([1, 17, 18].map((version) => codeFits(code(version), "middle"))).toEqual([true, true, false]);
  expect(codeFits(code(25), "large")).toBe(true);
  expect(codeFits(code(1), "small")).toBe(false);
  expect(codeFits("no picture", "large")).toBe(false);
});
