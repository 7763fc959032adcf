import fc from "fast-check";
import { expect, test } from "vitest";
import { arrangementCount, arrangements } from "./arrangements.ts";
import { factorial, midranks } from "./index.ts";

const values = fc.array(fc.integer({ min: 0, max: 6 }), { maxLength: 12 });

test("R1 ranks add up to n(n+1)/2, keep the order, and ties share", () => {
  fc.assert(
    fc.property(values, (list) => {
      const ranks = midranks(list);
      const n = list.length;
      expect(ranks.reduce((sum, rank) => sum + rank, 0)).toBe((n * (n + 1)) / 2);
      list.forEach((a, i) =>
        list.forEach((b, j) => expect(Math.sign((ranks[i] ?? 0) - (ranks[j] ?? 0))).toBe(Math.sign(a - b))),
      );
    }),
  );
});

test("R1 worked case, infinities allowed, NaN refused", () => {
  expect(midranks([10, 30, 10, 20])).toEqual([1.5, 4, 1.5, 3]);
  expect(midranks([Infinity, 0, -Infinity])).toEqual([3, 2, 1]);
  expect(() => midranks([1, Number.NaN])).toThrow("midranks requires numbers, got NaN at index 1");
});

test("arrangements are all different, n! over the ties' factorials in number", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 7 }), (list) => {
      const all = Array.from(arrangements(list), (order) => order.join());
      const ties = [0, 1, 2, 3].map((v) => factorial(list.filter((x) => x === v).length));
      expect(new Set(all).size).toBe(all.length);
      expect(BigInt(all.length)).toBe(ties.reduce((left, tie) => left / tie, factorial(list.length)));
      expect(arrangementCount(list)).toBe(all.length);
      for (const order of all) expect(order.split(",").toSorted()).toEqual(list.join().split(",").toSorted());
    }),
  );
});
