import fc from "fast-check";
import { expect, test } from "vitest";
import { parseAmount } from "./parse-amount.ts";
import { parseStrength } from "./parse-strength.ts";
import { parseVolume } from "./parse-volume.ts";

test.each([
  ["124.8 proof", "proof60F", 124.8],
  ["124.8proof", "proof60F", 124.8],
  ["100 Proof", "proof60F", 100],
  ["62.4%", "abv20", 62.4],
  ["62.4 % vol", "abv20", 62.4],
  ["62.4 abv", "abv20", 62.4],
  ["62.4 % ABV", "abv20", 62.4],
  ["62,4 %", "abv20", 62.4],
  ["62,4 % vol", "abv20", 62.4],
  ["46", "abv20", 46],
  [" 46 ", "abv20", 46],
  ["46\u00a0%", "abv20", 46],
  [".5%", "abv20", 0.5],
  ["0", "abv20", 0],
  ["100%", "abv20", 100],
  ["200 proof", "proof60F", 200],
])("strength %j is %s %d", (text, basis, value) => {
  expect(parseStrength(text)).toEqual({ ok: true, value: { basis, value } });
});

test.each([
  ["100.1%", "strength_out_of_range", "0 to 100 % vol"],
  ["124.8", "strength_out_of_range", "0 to 100 % vol"],
  ["-1%", "strength_out_of_range", "0 to 100 % vol"],
  ["\u22121%", "strength_out_of_range", "0 to 100 % vol"],
  ["201 proof", "strength_out_of_range", "0 to 200 proof"],
  ["", "strength_unreadable", 'a number with "%" or "proof"'],
  ["strong", "strength_unreadable", 'a number with "%" or "proof"'],
  ["46 ml", "strength_unreadable", 'a number with "%" or "proof"'],
  ["46.2.1%", "strength_unreadable", 'a number with "%" or "proof"'],
  ["4e1%", "strength_unreadable", 'a number with "%" or "proof"'],
  ["NaN", "strength_unreadable", 'a number with "%" or "proof"'],
  ["46 % 12", "strength_unreadable", 'a number with "%" or "proof"'],
  ["62,400 %", "strength_unreadable", "a number without a thousands comma"],
])("strength %j is refused: %s", (text, code, limit) => {
  const read = parseStrength(text);
  expect(read).toMatchObject({ ok: false, issue: { code, limit, received: text } });
});

test.each([
  ["2 oz", 59.147059125],
  ["1 fl oz", 29.5735295625],
  ["1 imp oz", 28.4130625],
  ["1 UK fl oz", 28.4130625],
  ["50 ml", 50],
  ["50ml", 50],
  ["50 mL", 50],
  ["5 cl", 50],
  ["70cl", 700],
  ["0.7 l", 700],
  ["0,7 L", 700],
  ["0,700 l", 700],
  ["1 litre", 1000],
  ["30", 30],
  ["0", 0],
])("volume %j is %d mL", (text, ml) => {
  const read = parseVolume(text);
  expect(read.ok && read.value).toBeCloseTo(ml, 9);
});

test.each([
  ["1,000 ml", "volume_unreadable"],
  ["12 g", "volume_unreadable"],
  ["a dram", "volume_unreadable"],
  ["3 barrels", "volume_unreadable"],
  ["", "volume_unreadable"],
  ["-5 ml", "volume_out_of_range"],
  ["1001 l", "volume_out_of_range"],
])("volume %j is refused: %s", (text, code) => {
  expect(parseVolume(text)).toMatchObject({ ok: false, issue: { code, received: text } });
});

test("the fluid ounces are exact: 231 cubic inches of 16.387064 mL / 128, and 4.54609 L / 160", () => {
  expect(parseVolume("1 oz")).toEqual({ ok: true, value: (231 * 16387064) / 128 / 1e6 });
  expect(parseVolume("1 imp oz")).toEqual({ ok: true, value: 4_546_090 / 160 / 1000 });
});

test("an amount is a volume or a mass; oz is a volume", () => {
  expect(parseAmount("12 g")).toEqual({ ok: true, value: { kind: "mass", massG: 12 } });
  expect(parseAmount("0.4 kg")).toEqual({ ok: true, value: { kind: "mass", massG: 400 } });
  expect(parseAmount("5 cl")).toEqual({ ok: true, value: { kind: "volume", volumeMl: 50 } });
  expect(parseAmount("30")).toEqual({ ok: true, value: { kind: "volume", volumeMl: 30 } });
  expect(parseAmount("1 oz")).toMatchObject({ ok: true, value: { kind: "volume" } });
  expect(parseAmount("-1 g")).toMatchObject({ ok: false, issue: { code: "mass_out_of_range" } });
  expect(parseAmount("-1 ml")).toMatchObject({ ok: false, issue: { code: "volume_out_of_range" } });
  expect(parseAmount("1,000 g")).toMatchObject({ ok: false, issue: { code: "amount_unreadable" } });
  expect(parseAmount("much")).toMatchObject({ ok: false, issue: { code: "amount_unreadable" } });
});

test("the message names what, limit and received, and a long text is cut", () => {
  expect(parseStrength("120%")).toMatchObject({
    issue: { message: 'strength requires 0 to 100 % vol, got "120%"' },
  });
  expect(parseVolume("  ")).toMatchObject({
    issue: { message: "volume requires a number with ml, cl, l or oz, got nothing" },
  });
  const read = parseVolume("x".repeat(10_000));
  expect(read.ok || read.issue.received.length).toBe(61);
});

test("no text makes reading throw, and what is read is in range", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.string({ unit: "binary" }), fc.double().map(String)), (text) => {
      const strength = parseStrength(text);
      const volume = parseVolume(text);
      const amount = parseAmount(text);
      expect(!strength.ok || (strength.value.value >= 0 && strength.value.value <= 200)).toBe(true);
      expect(!volume.ok || (volume.value >= 0 && volume.value <= 1e6)).toBe(true);
      expect(!volume.ok || amount.ok).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
