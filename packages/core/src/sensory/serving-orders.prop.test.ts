import fc from "fast-check";
import { expect, test } from "vitest";
import { seeded } from "./fixtures/seeded.ts";
import { orderBalance, servingOrders } from "./index.ts";

const glasses = fc.integer({ min: 1, max: 12 });
const tasters = fc.integer({ min: 1, max: 40 });

test("O1, O2 every taster gets every glass once, and positions are even to within 1", () => {
  fc.assert(
    fc.property(glasses, tasters, fc.nat(), (n, t, seed) => {
      const { orders, positionImbalance } = servingOrders(n, t, seeded(seed));
      expect(orders.length).toBe(t);
      for (const order of orders) expect(order.toSorted((a, b) => a - b)).toEqual([...Array(n).keys()]);
      for (let place = 0; place < n; place += 1) {
        const times = Array.from(
          { length: n },
          (_, g) => orders.filter((order) => order[place] === g).length,
        );
        expect(Math.max(...times) - Math.min(...times)).toBeLessThanOrEqual(positionImbalance);
      }
      expect(positionImbalance).toBeLessThanOrEqual(1);
    }),
    { numRuns: 300 },
  );
});

test("O3 whole squares are balanced for position and carry-over", () => {
  fc.assert(
    fc.property(glasses, fc.integer({ min: 1, max: 3 }), fc.nat(), (n, squares, seed) => {
      const rows = n % 2 === 0 ? n : 2 * n;
      expect(servingOrders(n, rows * squares, seeded(seed))).toMatchObject({
        positionImbalance: 0,
        carryOverImbalance: 0,
      });
    }),
  );
});

test("O3 imbalances are measured: one taster alone, and orders that are all the same", () => {
  expect(servingOrders(4, 1, seeded(1))).toMatchObject({ positionImbalance: 1, carryOverImbalance: 1 });
  expect(
    orderBalance([
      [0, 1, 2],
      [0, 1, 2],
      [0, 1, 2],
    ]),
  ).toEqual({
    positionImbalance: 3,
    carryOverImbalance: 3,
  });
  expect(orderBalance([])).toEqual({ positionImbalance: 0, carryOverImbalance: 0 });
});

test("O4 each of five glasses stands first about equally often over 5000 draws", () => {
  const rng = seeded(42);
  const firsts = [0, 0, 0, 0, 0];
  for (let i = 0; i < 5000; i += 1) {
    const first = servingOrders(5, 1, rng).orders[0]?.[0] ?? 0;
    firsts[first] = (firsts[first] ?? 0) + 1;
  }
  // Binomial(5000, 1/5): mean 1000, standard deviation 28.3; four of those either side.
  for (const times of firsts) expect(Math.abs(times - 1000)).toBeLessThan(114);
});

test("O4 one taster of four glasses may get any of the 24 orders", () => {
  const rng = seeded(7);
  const seen = new Set(Array.from({ length: 600 }, () => servingOrders(4, 1, rng).orders[0]?.join()));
  expect(seen.size).toBe(24);
});

test("O4 two tasters may get any two rows of the square", () => {
  const rng = seeded(7);
  const zigzag = [0, 1, 3, 2];
  // Rename the glasses so that the first taster has row 0; the second then starts with its row's number.
  const second = Array.from({ length: 200 }, () => {
    const [one = [], two = []] = servingOrders(4, 2, rng).orders;
    return zigzag[one.indexOf(two[0] ?? -1)];
  });
  expect([...new Set(second)].toSorted((a = 0, b = 0) => a - b)).toEqual([1, 2, 3]);
});

test("O1 counts out of range and rows that are no order throw", () => {
  const rng = seeded(1);
  expect(() => servingOrders(0, 3, rng)).toThrow("servingOrders requires a whole 1 to 12 glasses, got 0");
  expect(() => servingOrders(13, 3, rng)).toThrow(RangeError);
  expect(() => servingOrders(3, 0, rng)).toThrow("servingOrders requires a whole 1 or more tasters, got 0");
  expect(() =>
    orderBalance([
      [0, 1],
      [0, 0],
    ]),
  ).toThrow("orderBalance requires row 1 to order glasses 0 to 1, got [0,0]");
  expect(() => orderBalance([[0, 1], [0]])).toThrow(RangeError);
});
