import { expect, test } from "vitest";
import { cutTokens } from "./cut-tokens.ts";
import { parseRule } from "./parse-rule.ts";
import { printRule } from "./print-rule.ts";

test("L1 the forms of the language, each as it is printed", () => {
  for (const text of [
    "wheat >= 16 %, 55 % or stronger, only American oak",
    "at least 5 of 10 stone fruit, at most 1 of 10 smoke, 3 to 5 of 10 length of finish",
    "not the same distillery as slot 2",
    "released in or before 2019",
    "released in 2015 to 2019, released in or after 2001, released in 2018",
    "46 to 50 %, 46.5 % or weaker",
    "8 years or older, 12 years or younger, 8 to 12 years",
    "at most 90 a litre, at least 20 a litre, 20 to 90.5 a litre",
    "rye 51 to 100 %, corn <= 20 %",
    "only wheat or rye, no corn, some malted barley",
    "only wood acacia, no American oak or European oak",
    "some casks that held port or sherry, no casks that held whiskey",
    "kind malt or pot still, not kind rye",
    "from the north, not from Saltreach Island".replace("the north", '"the north"'),
    "distilled at Saltreach, not made by Dunnage Row, tagged peated, not tagged sweet",
    "the same maker as slot 12, not the same kind as slot 1, still sold",
    "anything",
  ]) {
    const parsed = parseRule(text);
    expect(parsed).toMatchObject({ ok: true });
    expect(parsed.ok && printRule(parsed.rule)).toBe(text);
  }
});

test("L1 other ways to write the same", () => {
  for (const [text, printed] of [
    ["WHEAT ≥ 16%,55%  OR Stronger", "WHEAT >= 16 %, 55 % or stronger"],
    ["strength >= 55 %, at most 60 %", "55 % or stronger, 60 % or weaker"],
    ["at least 8 years, at most 1 year", "8 years or older, 1 years or younger"],
    ["at least 5 of 10 fruit.stone", "at least 5 of 10 stone fruit"],
    ['no grain "rye"', "no rye"],
  ] as const) {
    const parsed = parseRule(text);
    expect(parsed.ok ? printRule(parsed.rule) : parsed.error).toBe(printed);
  }
});

test.each([
  ["", 0, 0, "the end"],
  ["55 % or", 7, 7, "the end"],
  ["wheat >= 16 %, 55 %, only American oak", 19, 20, ","],
  ["wheat >= 116 %", 9, 12, "116"],
  ["at least 15 of 10 smoke", 12, 14, "of"],
  ["at least 5 of 20 smoke", 17, 22, "smoke"],
  ["only American oak or rye, 5 % or weaker", 24, 25, ","],
  ["50 to 46 %", 6, 8, "46"],
  ["released in 2019.5", 12, 18, "2019.5"],
  ["not the same distillery as slot 13", 32, 34, "13"],
  ["wheat >= 0.0000001 %", 9, 18, "0.0000001"],
  ['from "no end', 5, 6, '"'],
  ["wheat & rye", 6, 7, "&"],
  ["wheat; rye", 5, 6, ";"],
  ["anything, 5 % or weaker", 8, 9, ","],
])("L2 %s: the error stands at %i to %i", (text, at, end, received) => {
  const parsed = parseRule(text);
  expect(parsed).toMatchObject({ ok: false, error: { at, end, received } });
});

// How fast they are read, and that ten times the text takes ten times as long, stands in the benchmarks.
test.each([
  ['"a\\"', 5, 6],
  ['"', 0, 2],
  ["a ", 2000, 2000],
  ["a or ", 2, 4],
  ["55 % or stronger, ", 720, 722],
  ["wheat ", 2000, 2000],
  ["1", 0, 2000],
  ["9.", 3, 4],
  ["  ", 2000, 2000],
  ["≥", 0, 1],
  ["only a or ", 10, 14],
])("L3 2,000 characters of %s: one error, at %i to %i", (piece, at, end) => {
  expect(parseRule(piece.repeat(2000).slice(0, 2000))).toMatchObject({ ok: false, error: { at, end } });
});

test("L3 a text in pieces is the whole text; what is too long is refused", () => {
  const text = 'a "b\\"" or 5 % '.repeat(1000);
  const tokens = cutTokens(text);
  expect(tokens).toHaveLength(5 * 1000 + 1);
  expect(tokens.every(({ end }, n) => n === tokens.length - 1 || end <= tokens[n + 1]!.at)).toBe(true);
  expect(parseRule("a".repeat(1_000_000))).toMatchObject({
    ok: false,
    error: { code: "rule_out_of_bounds", at: 2000 },
  });
  expect(parseRule("still sold, ".repeat(41).slice(0, -2))).toMatchObject({
    ok: false,
    error: { code: "rule_out_of_bounds", at: 480 },
  });
});
