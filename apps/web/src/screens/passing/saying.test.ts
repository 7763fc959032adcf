import { parseRule, printCondition } from "@partsproof/core/slots";
import { expect, test } from "vitest";
import { factWords, valueWords } from "./fact-words.ts";
import { ABOUTS, conditionOf, startOf } from "./saying.ts";

test("every sentence that can be tapped is one that the rule language reads again", () => {
  const said = ABOUTS.map(({ about }) => printCondition(conditionOf(startOf(about, null, 2))));
  expect(said).toEqual([
    "50 % or stronger",
    "4 years or older",
    "kind malt",
    "from Europe",
    "rye >= 51 %",
    "only American oak",
    "only casks that held bourbon",
    "at least 4 of 10 honey",
    "at most 100 a litre",
    "not the same distillery as slot 1",
    "still sold",
  ]);
  for (const text of said) expect(parseRule(text).ok).toBe(true);
});

test("a fact that is missing is told in words", () => {
  expect(["casks", "profile fruit.stone", "distillery of slot 2"].map(factWords)).toEqual([
    "its casks",
    "how much stone fruit it has",
    "where it was distilled in slot 2",
  ]);
  expect(valueWords(50.060926)).toBe("50.06");
});
