import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

const css = readFileSync(new URL("tokens.css", import.meta.url), "utf8");

/** The colours of one block of tokens.css. */
function colours(selector: string): ReadonlyMap<string, string> {
  const start = css.indexOf(`${selector} {`);
  if (start === -1) throw new Error(`tokens.css requires a block ${selector}, got none`);
  const block = css.slice(start, css.indexOf("}", start));
  return new Map(
    [...block.matchAll(/(--[\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name = "", hex = ""]) => [name, hex]),
  );
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const s = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

const TEXT = [
  ...["--ink", "--soft", "--accent", "--accent-deep", "--wrong"].flatMap((text) =>
    ["--ground", "--sheet", "--well"].map((ground) => [text, ground] as const),
  ),
  ["--ink", "--tint"],
  ["--soft", "--tint"],
  ["--accent-deep", "--tint"],
  ["--on-accent", "--accent"],
  ["--on-accent", "--accent-deep"],
  ["--wrong", "--wrong-tint"],
  ["--ink", "--wrong-tint"],
  ["--right", "--right-tint"],
  ["--ink", "--right-tint"],
  ["--right", "--sheet"],
] as const;
/** Edges of controls and of drawings that carry meaning. */
const EDGES = [
  ["--edge", "--ground"],
  ["--edge", "--sheet"],
  ["--accent", "--ground"],
] as const;

for (const selector of [':root[data-theme="light"]', ':root[data-theme="dark"]']) {
  const all = colours(selector);
  const of = (name: string): string => {
    const hex = all.get(name);
    if (hex === undefined) throw new Error(`${selector} requires ${name}, got none`);
    return hex;
  };
  test(`text of ${selector} keeps 4.5 to 1, edges 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11)`, () => {
    const low = [
      ...TEXT.map((pair) => [...pair, 4.5] as const),
      ...EDGES.map((pair) => [...pair, 3] as const),
    ].flatMap(([front, back, least]) => {
      const ratio = contrast(of(front), of(back));
      return ratio < least ? [`${front} on ${back}: ${ratio.toFixed(2)}`] : [];
    });
    expect(low).toEqual([]);
  });
}

test("the contrast of black and white is 21 to 1, and of #777777 on white 4.48 (W3C, understanding 1.4.3)", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
});

test("the dark colours are the same whether the device or the reader asks for them", () => {
  const chosen = colours(':root[data-theme="dark"]');
  expect(colours(':root:not([data-theme="light"])')).toEqual(chosen);
  expect(chosen.size).toBeGreaterThan(20);
});
