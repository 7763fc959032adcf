import { expect, test } from "vitest";
import { MAX_GLASSES, orderBalance, williamsSquare } from "./index.ts";
import reference from "./williams.oracle.json" with { type: "json" };

/** Counts by definition: how often each thing stands at each position, and each ordered pair side by side. */
function counts(rows: readonly (readonly number[])[]): { positions: number[]; pairs: number[] } {
  const n = rows[0]?.length ?? 0;
  const positions: number[] = [];
  const pairs: number[] = [];
  for (let a = 0; a < n; a += 1) {
    for (let place = 0; place < n; place += 1) positions.push(rows.filter((row) => row[place] === a).length);
    for (let b = 0; b < n; b += 1) {
      if (a === b) continue;
      pairs.push(rows.flatMap((row) => row.slice(1).filter((x, i) => x === b && row[i] === a)).length);
    }
  }
  return { positions: [...new Set(positions)], pairs: [...new Set(pairs)] };
}

test.each(Object.entries(reference.williams))("W1 n = %s is the published square", (n, published) => {
  const square = williamsSquare(Number(n));
  expect(square.map((row) => row.map((thing) => thing + 1))).toEqual(published.sequences);
  expect(counts(square)).toEqual({
    positions: [published.each_position_count],
    pairs: [published.each_ordered_pair_adjacent],
  });
});

test.each(Array.from({ length: MAX_GLASSES - 1 }, (_, i) => i + 2))(
  "W1 n = %i is balanced both ways",
  (n) => {
    const square = williamsSquare(n);
    const times = n % 2 === 0 ? 1 : 2;
    expect(square.length).toBe(times * n);
    expect(counts(square)).toEqual({ positions: [times], pairs: [times] });
    expect(orderBalance(square)).toEqual({ positionImbalance: 0, carryOverImbalance: 0 });
  },
);

test.each([1, 13, 2.5, Number.NaN])("W1 n = %d throws", (n) => {
  expect(() => williamsSquare(n)).toThrow(`williamsSquare requires a whole n from 2 to 12, got ${n}`);
});
