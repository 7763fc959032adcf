import fc from "fast-check";
import { expect, test } from "vitest";
import oracle from "./confidence.oracle.json" with { type: "json" };
import { chancesTest, chosenSumTest } from "./index.ts";

test("J6 counts of different chances agree with scipy, sums of marked values with every choice gone through", () => {
  let off = 0;
  const far = (a: number, b: number): number => (b === 0 ? a : Math.abs(a / b - 1));
  for (const { chances, right, lower, upper } of oracle.chances) {
    const found = chancesTest(chances.map((chance, i) => ({ chance, right: right[i] === true })));
    off = Math.max(off, far(found.lower, lower), far(found.upper, upper));
  }
  for (const { groups, p, leastP } of oracle.sums) {
    const found = chosenSumTest(
      groups.map(({ values, marked }) => values.map((value, i) => ({ value, marked: marked[i] === true }))),
    );
    off = Math.max(off, far(found.p, p), far(found.leastP, leastP));
  }
  console.log(`confidence against scipy and every choice: off by ${off.toExponential(1)} at most (relative)`);
  // Where scipy goes by Fourier's transform its own small tails are good to about 1e-12.
  expect(off).toBeLessThan(1e-9);
});

test("J6 over all choices of marks p is at most alpha in at most alpha of them, and never below the least", () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(10, 30, 50, 70, 90), { minLength: 2, maxLength: 6 }),
      fc.integer({ min: 0, max: 5 }),
      (values, marks) => {
        const all = Array.from({ length: 2 ** values.length }, (_, bits) =>
          values.map((value, i) => ({ value, marked: ((bits >> i) & 1) === 1 })),
        ).filter((group) => group.filter(({ marked }) => marked).length === Math.min(marks, values.length));
        const tests = all.map((group) => chosenSumTest([group]));
        for (const alpha of [0.05, 0.2, 0.5])
          expect(tests.filter(({ p }) => p <= alpha).length).toBeLessThanOrEqual(alpha * tests.length + 1e-9);
        for (const { p, leastP } of tests) expect(p).toBeGreaterThanOrEqual(leastP - 1e-12);
      },
    ),
    { numRuns: 50 },
  );
});

test("J6 what is no chance and no whole value throws", () => {
  expect(() => chancesTest([{ chance: 1.2, right: true }])).toThrow("chances from 0 to 1, got 1.2");
  expect(() => chosenSumTest([[{ value: 0.5, marked: true }]])).toThrow("whole values of 0 or more, got 0.5");
  expect(chancesTest([])).toMatchObject({ right: 0, p: 1 });
  expect(chosenSumTest([])).toEqual({ p: 1, leastP: 1 });
});
