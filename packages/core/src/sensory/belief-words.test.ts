import fc from "fast-check";
import { expect, test } from "vitest";
import { bestWords, betterWords, shownProbability } from "./index.ts";

const belief = (probability: number, monteCarloError = 0.005) => ({
  probability,
  monteCarloError,
  sheets: 6,
});

test("Y1 the words, the number and the method stand together", () => {
  expect(betterWords("Glass 3", "Glass 1", belief(0.87))).toBe(
    "Glass 3 is likely better liked than Glass 1 (probability 0.87, Bayesian worths from rankings, 6 sheets).",
  );
  expect(betterWords("Glass 1", "Glass 3", belief(0.13))).toBe(
    betterWords("Glass 3", "Glass 1", belief(0.87)),
  );
  expect(betterWords("Glass 3", "Glass 1", belief(0.52))).toBe(
    "These sheets do not say which of Glass 3 and Glass 1 is better liked (probability 0.52 for Glass 3, Bayesian worths from rankings, 6 sheets).",
  );
  expect(bestWords("Glass 3", 5, belief(0.62))).toBe(
    "Glass 3 is perhaps the best liked of the 5 (probability 0.62, by luck 0.20; Bayesian worths from rankings, 6 sheets).",
  );
  expect(bestWords("Glass 3", 5, belief(0.4))).toBe(
    "These sheets do not say which of the 5 is the best liked; the likeliest is Glass 3 (probability 0.40, by luck 0.20; Bayesian worths from rankings, 6 sheets).",
  );
});

test("Y1 a page about one of them speaks of that one, and of the sheets on which both stand", () => {
  const sense = { better: "better liked", best: "the best liked", worse: "liked less" };
  expect(betterWords("Glass 1", "Glass 3", { ...belief(0.13), both: 2 }, sense)).toBe(
    "Glass 1 is likely liked less than Glass 3 (probability 0.87, Bayesian worths from rankings, 6 sheets, both in 2).",
  );
  expect(betterWords("Glass 1", "Glass 3", { ...belief(0.87), both: 6 }, sense)).toBe(
    betterWords("Glass 1", "Glass 3", belief(0.87)),
  );
  expect(betterWords("Glass 1", "Glass 3", belief(0.48), sense)).toBe(
    betterWords("Glass 3", "Glass 1", belief(0.52)),
  );
});

test("Y2 a threshold that drawing could have crossed is not taken, and nothing is said to be certain", () => {
  expect(betterWords("A", "B", belief(0.955))).toContain("is likely better liked");
  expect(betterWords("A", "B", belief(0.965))).toContain("is very likely better liked");
  expect(shownProbability(0.9996)).toBe("more than 0.99");
  expect(shownProbability(0.0004)).toBe("less than 0.01");
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (p) => {
      const said = betterWords("A", "B", belief(p));
      expect(said).toMatch(/probability (more than |less than )?0\.\d\d/);
      // Whoever is called better has the probability on their side, by more than the drawing error.
      expect(
        said.startsWith("A is ") ? p > 0.6 : said.startsWith("B is ") ? p < 0.4 : p < 0.63 && p > 0.37,
      ).toBe(true);
    }),
  );
  expect(() => betterWords("A", "B", belief(1.2))).toThrow("a probability from 0 to 1, got 1.2");
});
