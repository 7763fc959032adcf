import fc from "fast-check";
import { expect, test } from "vitest";
import { compensatedSum } from "./compensated-sum.ts";
import { exactSum } from "./exact-sum.ts";
import { runningSum } from "./running-sum.ts";

/** An oracle in whole numbers: every double is a whole multiple of 2^-1074, so BigInt adds them exactly. */
function exactByWholeNumbers(values: readonly number[]): { readonly scaled: bigint } {
  const view = new DataView(new ArrayBuffer(8));
  let scaled = 0n;
  for (const x of values) {
    view.setFloat64(0, x);
    const bits = view.getBigUint64(0);
    const exponent = (bits >> 52n) & 0x7ffn;
    const mantissa = (bits & 0xfffffffffffffn) | (exponent === 0n ? 0n : 1n << 52n);
    const size = mantissa << (exponent === 0n ? 0n : exponent - 1n);
    scaled += bits >> 63n === 1n ? -size : size;
  }
  return { scaled };
}

const away = (a: bigint, b: bigint): bigint => (a > b ? a - b : b - a);
const values = fc.array(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e100, max: 1e100 }), {
  maxLength: 40,
});

/** The doubles just below and just above x. */
function neighbours(x: number): readonly [number, number] {
  const view = new DataView(new ArrayBuffer(8));
  const step = (up: boolean): number => {
    if (x === 0) return up ? Number.MIN_VALUE : -Number.MIN_VALUE;
    view.setFloat64(0, x);
    view.setBigInt64(0, view.getBigInt64(0) + (x > 0 === up ? 1n : -1n));
    return view.getFloat64(0);
  };
  return [step(false), step(true)];
}

test("exactSum gives the double nearest to the exact sum, by whole-number arithmetic", () => {
  fc.assert(
    fc.property(values, (terms) => {
      const exact = exactByWholeNumbers(terms).scaled;
      const sum = exactSum(terms);
      const miss = away(exactByWholeNumbers([sum]).scaled, exact);
      for (const other of neighbours(sum)) {
        expect(away(exactByWholeNumbers([other]).scaled, exact) >= miss).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
});

test("exactSum does not depend on the order", () => {
  const shuffled = values.chain((all) =>
    fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
  );
  fc.assert(
    fc.property(shuffled, ([one, other]) => {
      expect(exactSum(other)).toBe(exactSum(one));
    }),
  );
});

test("exactSum keeps what plain addition loses, and rounds half to even across the tail", () => {
  expect(exactSum([])).toBe(0);
  expect(exactSum(Array.from({ length: 10 }, () => 0.1))).toBe(1);
  expect(exactSum([1e16, 1, 1e-16])).toBe(10000000000000002);
  expect(exactSum([1e16, 1, -1e-16])).toBe(1e16);
});

test("exactSum refuses what is not finite", () => {
  expect(() => exactSum([1, Number.NaN])).toThrow("exactSum requires finite terms, got NaN");
  expect(() => exactSum([Number.MAX_VALUE, Number.MAX_VALUE])).toThrow(RangeError);
});

test("compensatedSum of a thousand terms of one sign is within two units in the last place of the exact sum", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 1000 }),
      (terms) => {
        const exact = exactSum(terms);
        expect(Math.abs(compensatedSum(terms) - exact)).toBeLessThanOrEqual(2 * Number.EPSILON * exact);
      },
    ),
  );
});

test("compensatedSum keeps a small term between two that cancel", () => {
  expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
});

test("runningSum is exactSum term by term, and starts again when cleared", () => {
  const sum = runningSum();
  fc.assert(
    fc.property(values, (terms) => {
      sum.clear();
      for (const [n, term] of terms.entries()) {
        sum.add(term);
        expect(sum.total()).toBe(exactSum(terms.slice(0, n + 1)));
      }
    }),
  );
});

test("a running sum of nothing is 0, also after it was cleared", () => {
  const sum = runningSum();
  expect(sum.total()).toBe(0);
  sum.add(3);
  sum.clear();
  expect(sum.total()).toBe(0);
});

test("exactSum survives terms that are themselves sums, and a throw half way", () => {
  function* sums(): Generator<number> {
    yield exactSum([1, 2]);
    yield exactSum([3, 4]);
  }
  expect(exactSum(sums())).toBe(10);
  expect(() => exactSum([1, Number.NaN])).toThrow(RangeError);
  expect(exactSum([1, 2])).toBe(3);
});

test("a sum that needs dozens of partials keeps them all", () => {
  const spread = Array.from({ length: 35 }, (_, k) => 2 ** (900 - 55 * k));
  const there = [...spread, ...spread.map((x) => -x).toReversed()];
  expect(exactSum(there)).toBe(0);
});
