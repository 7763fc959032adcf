import fc from "fast-check";
import { expect, test } from "vitest";
import type { Rng } from "../statistics/index.ts";
import { seeded } from "./fixtures/seeded.ts";
import { canAnswer, glassesPoured, type QuestionAsk, questionNeeds, QUESTIONS } from "./index.ts";

const risks = { alpha: 0.05, beta: 0.2 };
const discrimination = (
  method: "triangle" | "duo_trio" | "paired" | "tetrad",
  share: number,
  sides: 1 | 2 = 1,
) => ({ question: "tell_apart", method, sides, share }) as const;

// Smallest and stable numbers as counted by statistics/binomial.oracle.py; smallest as ISO 4120 table A.3 (from memory).
test.each([
  ["triangle", 50, { smallest: 16, stable: 16, criticalAtSmallest: 9, criticalAtStable: 9 }, 3],
  ["tetrad", 50, { smallest: 16, stable: 16, criticalAtSmallest: 9, criticalAtStable: 9 }, 3],
  ["triangle", 30, { smallest: 40, stable: 42, criticalAtSmallest: 19, criticalAtStable: 20 }, 3],
  ["duo_trio", 50, { smallest: 23, stable: 28, criticalAtSmallest: 16, criticalAtStable: 19 }, 5],
  ["paired", 40, { smallest: 37, stable: 42, criticalAtSmallest: 24, criticalAtStable: 27 }, 5],
] as const)("Q1 %s, %i %% can tell", (method, share, trials, fewest) => {
  expect(questionNeeds(discrimination(method, share), risks)).toEqual({ trials, fewest });
});

test("Q1 two-sided pairs need more than one-sided ones, and six all alike are needed at least", () => {
  const two = questionNeeds(discrimination("paired", 50, 2), risks);
  expect(two.fewest).toBe(6); // 2·(1/2)^6 = 0.031 and 2·(1/2)^5 = 0.0625
  expect(two.trials?.smallest).toBeGreaterThan(23);
  expect(() => questionNeeds(discrimination("triangle", 50, 2), risks)).toThrow(
    "requires the paired comparison, got triangle",
  );
});

test("Q2 names: with 3 glasses all right is 1 in 6, with 4 it is 1 in 24 and enough", () => {
  const names = (glasses: number, known: number, distractors = 0) =>
    questionNeeds({ question: "which_is_which", glasses, distractors, known }, risks);
  expect(names(3, 3)).toEqual({
    trials: { smallest: 2, stable: 2, criticalAtSmallest: 6, criticalAtStable: 6 },
    fewest: 2,
  });
  expect(names(4, 4).trials?.smallest).toBe(1);
  expect(names(4, 4).fewest).toBe(1);
  // A distractor: 1 in 24 already with 3 glasses of 4 names.
  expect(names(3, 3, 1).fewest).toBe(1);
});

test("Q2 with names: the chance of passing, played out 4000 times, is that of the law", () => {
  const [glasses, known] = [5, 2];
  const { trials } = questionNeeds({ question: "which_is_which", glasses, distractors: 0, known }, risks);
  if (trials === null) throw new Error("no number");
  const rng = seeded(11);
  let [passed, lucky] = [0, 0];
  for (let round = 0; round < 4000; round += 1) {
    const right = (knows: number): number =>
      Array.from({ length: trials.smallest }, () => knows + fixedPoints(glasses - knows, rng)).reduce(
        (a, b) => a + b,
        0,
      );
    if (right(known) >= trials.criticalAtSmallest) passed += 1;
    if (right(0) >= trials.criticalAtSmallest) lucky += 1;
  }
  // Three standard deviations of a share of 4000 are at most 0.024.
  expect(passed / 4000).toBeGreaterThan(0.8 - 0.024);
  expect(lucky / 4000).toBeLessThan(0.05 + 0.012);
});

function fixedPoints(n: number, rng: Rng): number {
  const left = [...Array(n).keys()];
  return Array.from({ length: n }, (_, i) => left.splice(rng.below(left.length), 1)[0] === i).filter(Boolean)
    .length;
}

test("Q3 two rankings: three glasses in the same order are 1 in 6, four 1 in 24", () => {
  const again = (glasses: number, per: number) =>
    questionNeeds({ question: "agree_with_myself", glasses, again: per }, risks);
  expect(again(3, 90).fewest).toBe(2);
  expect(again(4, 90).fewest).toBe(1);
  // Five glasses: at most 1 of 10 pairs turned round has 5 of 120 orders (1 + 4, OEIS A008302): 9 kept of 10, p = 0.042.
  expect(again(5, 90).trials).toMatchObject({ smallest: 1, criticalAtSmallest: 9 });
  expect(again(5, 80).trials?.smallest).toBeGreaterThan(1);
});

test("Q4 first places: luck is one in n, shared out over n glasses where the winner is not named beforehand", () => {
  const best = questionNeeds({ question: "like_best", glasses: 4, share: 100 }, risks);
  const target = questionNeeds({ question: "how_close", glasses: 4, share: 100 }, risks);
  expect(best.fewest).toBe(4); // 4·(1/4)^4 = 1/64; with three 4·(1/4)^3 = 1/16
  expect(target.fewest).toBe(3); // (1/4)^3 = 1/64; (1/4)^2 = 1/16
  expect(target.trials?.smallest).toBe(3);
});

const asks: fc.Arbitrary<QuestionAsk> = fc.oneof(
  fc.record({
    question: fc.constantFrom("like_best", "how_close"),
    glasses: fc.integer({ min: 2, max: 8 }),
    share: fc.integer({ min: 30, max: 100 }),
  }),
  fc.record({
    question: fc.constantFrom("tell_apart", "changed"),
    method: fc.constantFrom("triangle", "duo_trio", "paired", "tetrad"),
    sides: fc.constant(1 as const),
    share: fc.integer({ min: 30, max: 100 }),
  }),
  fc.integer({ min: 2, max: 5 }).chain((glasses) =>
    fc.record({
      question: fc.constant("which_is_which" as const),
      glasses: fc.constant(glasses),
      distractors: fc.nat(2),
      known: fc.integer({ min: 1, max: glasses }),
    }),
  ),
  fc.record({
    question: fc.constant("agree_with_myself" as const),
    glasses: fc.integer({ min: 2, max: 6 }),
    again: fc.integer({ min: 60, max: 99 }),
  }),
);

test("Q5 fewest <= smallest <= stable; smaller risks never need less", () => {
  fc.assert(
    fc.property(asks, (ask) => {
      const { trials, fewest } = questionNeeds(ask, risks);
      if (trials === null) return;
      expect(fewest).toBeLessThanOrEqual(trials.smallest);
      expect(trials.smallest).toBeLessThanOrEqual(trials.stable);
      const strict = questionNeeds(ask, { alpha: 0.05, beta: 0.1 }).trials;
      if (strict !== null) expect(strict.smallest).toBeGreaterThanOrEqual(trials.smallest);
      expect(questionNeeds(ask, { alpha: 0.01, beta: 0.2 }).fewest).toBeGreaterThanOrEqual(fewest);
    }),
    { numRuns: 40 },
  );
});

test("Q6 with what it needs at hand there is no shortage, with one trial or one millilitre less there is", () => {
  fc.assert(
    fc.property(asks, (ask) => {
      const { trials } = questionNeeds(ask, risks);
      if (trials === null) return;
      const leftMl = glassesPoured(ask, trials.smallest).map((glasses) => 10 * glasses);
      const atHand = { tasters: trials.smallest, sittings: 1, pourMl: 10, leftMl };
      expect(canAnswer(ask, atHand, risks).shortages).toEqual([]);
      const fewer = canAnswer(ask, { ...atHand, leftMl: leftMl.map((ml) => ml - 1) }, risks).shortages;
      expect(fewer.map(({ code }) => code)).toEqual(leftMl.map(() => "too_little_left"));
      if (trials.smallest === 1) return;
      const codes = canAnswer(ask, { ...atHand, tasters: trials.smallest - 1 }, risks).shortages.map(
        ({ code }) => code,
      );
      expect(codes).toContain("too_few_for_risk");
    }),
    { numRuns: 40 },
  );
});

test("Q6 four friends and a triangle: what is missing is said in numbers", () => {
  const { shortages, cannot, sentence } = canAnswer(
    discrimination("triangle", 50),
    { tasters: 4, sittings: 1, pourMl: 10, leftMl: [700, 60] },
    risks,
  );
  expect(sentence).toBe(QUESTIONS.tell_apart.sentence);
  expect(shortages.map(({ message }) => message)).toEqual([
    "such a difference requires 16 trials to be missed no more often than 20 %, got 4 (4 tasters, 1 sitting)",
    "whiskey 2 requires 240 mL for 24 glasses of 10 mL, got 60 mL",
  ]);
  expect(cannot).toContain("That nobody was found to tell them apart does not show that nobody can.");
  const alone = canAnswer(
    discrimination("triangle", 50),
    { tasters: 1, sittings: 2, pourMl: 10, leftMl: [700, 700] },
    risks,
  );
  expect(alone.shortages.map(({ code }) => code)).toEqual(["too_few_for_any", "too_few_for_risk"]);
  expect(alone.cannot).toContain("With one taster it speaks of that taster only.");
  const twice = canAnswer(
    discrimination("triangle", 50),
    { tasters: 8, sittings: 2, pourMl: 10, leftMl: [700, 700] },
    risks,
  );
  expect(twice.shortages).toEqual([]);
  expect(twice.cannot).toContain(
    "With several sittings a taster it can show that somebody tells, not that nobody can.",
  );
  const tiny = canAnswer(
    discrimination("triangle", 1),
    { tasters: 8, sittings: 2, pourMl: 10, leftMl: [700, 700] },
    risks,
  );
  expect(tiny.shortages.map(({ code }) => code)).toEqual(["never_enough"]);
});

test("Q6 every question is explained in one plain sentence", () => {
  for (const { title, sentence, cannot } of Object.values(QUESTIONS)) {
    expect(title).toMatch(/\?$/);
    expect(sentence).toMatch(/^[A-Z][^.?!]*\.$/);
    expect(cannot.length).toBeGreaterThan(1);
  }
  expect(Object.keys(QUESTIONS)).toHaveLength(6);
});

test("Q1-Q6 numbers out of range throw", () => {
  expect(() => questionNeeds(discrimination("triangle", 0), risks)).toThrow(
    "a share requires a whole number from 1 to 100, got 0",
  );
  expect(() => questionNeeds(discrimination("triangle", 50), { alpha: 0, beta: 0.2 })).toThrow(
    "a risk requires 0.001 to 0.5, got 0",
  );
  expect(() => questionNeeds({ question: "like_best", glasses: 13, share: 50 }, risks)).toThrow(
    "from 2 to 12, got 13",
  );
  expect(() => questionNeeds({ question: "agree_with_myself", glasses: 4, again: 50 }, risks)).toThrow(
    "from 51 to 99, got 50",
  );
  expect(() =>
    questionNeeds({ question: "which_is_which", glasses: 4, distractors: 0, known: 5 }, risks),
  ).toThrow("from 1 to 4, got 5");
  const atHand = { tasters: 4, sittings: 1, pourMl: 10, leftMl: [100, 100] };
  expect(() => canAnswer(discrimination("triangle", 50), { ...atHand, tasters: 0 }, risks)).toThrow(
    "got 0 and 1",
  );
  expect(() => canAnswer(discrimination("triangle", 50), { ...atHand, pourMl: 0 }, risks)).toThrow(
    "got 0 mL",
  );
  expect(() => canAnswer(discrimination("triangle", 50), { ...atHand, leftMl: [1] }, risks)).toThrow(
    "2 volumes of 0 mL or more, got [1] mL",
  );
});
