import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { issuesAt } from "./issues-at.ts";
import { sentence } from "./sentence.ts";
import { spreadLabels } from "./spread-labels.ts";
import { stackAmounts } from "./stack-amounts.ts";

const issue = (...path: (string | number)[]) => ({
  code: "x",
  path,
  limit: "",
  received: null,
  message: path.join("/"),
});

test("a field gets the issues of its path and of what is inside it, and no other field's", () => {
  const issues = [issue("slots", 1, "of", "whiskeyId"), issue("slots", 10, "of"), issue("slots"), issue()];
  expect(issuesAt(issues, ["slots", 1, "of"]).map(({ message }) => message)).toEqual([
    "slots/1/of/whiskeyId",
  ]);
  expect(issuesAt(issues, ["slots", "1", "of"])).toHaveLength(1);
  expect(issuesAt(issues, ["slots"])).toHaveLength(3);
});

test("the house's text becomes a sentence once", () => {
  expect(sentence("strength requires 0 to 100 % vol, got 140 % vol")).toBe(
    "Strength requires 0 to 100 % vol, got 140 % vol.",
  );
  expect(sentence("Done.")).toBe("Done.");
});

describe("labels beside the column", () => {
  test("they keep their order, do not overlap and stay inside, wherever they want to be", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 5, max: 25 }),
        (places, height) => {
          const wanted = places.toSorted((a, b) => a - b);
          const got = spreadLabels(wanted, height, 300);
          for (const [i, centre] of got.entries()) {
            expect(centre).toBeGreaterThanOrEqual(height / 2 - 1e-9);
            expect(centre).toBeLessThanOrEqual(300 - height / 2 + 1e-9);
            const above = i === 0 ? Number.NEGATIVE_INFINITY : (got[i - 1] ?? Number.NaN);
            expect(centre - above).toBeGreaterThanOrEqual(height - 1e-9);
          }
        },
      ),
    );
  });

  test("labels with room stay where they want to be", () => {
    expect(spreadLabels([50, 150, 250], 20, 300)).toEqual([50, 150, 250]);
  });

  test("more labels than fit are spread evenly", () => {
    expect(spreadLabels([1, 2, 3], 20, 30)).toEqual([5, 15, 25]);
  });
});

test("slices are as high as their amounts and fill the column", () => {
  expect(stackAmounts([2, 1, 0, 1], 10, 200)).toEqual([
    { top: 10, height: 100 },
    { top: 110, height: 50 },
    { top: 160, height: 0 },
    { top: 160, height: 50 },
  ]);
  expect(stackAmounts([0, 0], 0, 100)).toEqual([
    { top: 0, height: 0 },
    { top: 0, height: 0 },
  ]);
});
