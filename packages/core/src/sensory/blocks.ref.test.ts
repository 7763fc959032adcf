import { expect, test } from "vitest";
import { STARTERS } from "./balanced-blocks.data.ts";
import published from "./blocks.published.json" with { type: "json" };
import { balancedBlocks, blockBalance } from "./index.ts";

const asText = (blocks: readonly (readonly number[])[]): string[] =>
  blocks.map((block) => block.toSorted((a, b) => a - b).join()).toSorted();

test.each(published.designs)(
  "K1 $name: parameters as published, balance by counting",
  ({ name, v, k, b, r, lambda, blocks }) => {
    const printed = blocks.map((block) => block.map((thing) => thing - 1));
    expect(blockBalance(printed, v)).toMatchObject({ servings: [r, r], meetings: [lambda, lambda] });
    const ours = balancedBlocks(v, k) ?? [];
    // Where both all subsets and a smaller design are published, the smaller is the one on file.
    const smaller = name === "6,3 all subsets" ? "6,3 (b=10)" : name;
    if (smaller !== name) return;
    expect(ours.length).toBe(b);
    expect(asText(ours)).toEqual(asText(printed));
  },
);

// Cochran and Cox, Experimental Designs, 2nd ed. 1957, index of plans of ch. 11 (from memory): v, k, b, r, λ. 5.3 and the like
// are all subsets; 8.6, 10.6 and 11.6 complements.
test.each([
  [4, 2, 6, 3, 1],
  [5, 3, 10, 6, 3],
  [6, 3, 10, 5, 2],
  [6, 4, 15, 10, 6],
  [7, 2, 21, 6, 1],
  [7, 3, 7, 3, 1],
  [7, 4, 7, 4, 2],
  [8, 2, 28, 7, 1],
  [8, 4, 14, 7, 3],
  [8, 7, 8, 7, 6],
  [9, 2, 36, 8, 1],
  [9, 3, 12, 4, 1],
  [9, 4, 18, 8, 3],
  [9, 5, 18, 10, 5],
  [9, 6, 12, 8, 5],
  [10, 3, 30, 9, 2],
  [10, 4, 15, 6, 2],
  [10, 5, 18, 9, 4],
  [10, 6, 15, 9, 5],
  [11, 5, 11, 5, 2],
  [11, 6, 11, 6, 3],
  [12, 3, 44, 11, 2],
  [12, 4, 33, 11, 3],
  [12, 6, 22, 11, 5],
  [13, 3, 26, 6, 1],
  [13, 4, 13, 4, 1],
  [13, 6, 26, 12, 5],
  [15, 3, 35, 7, 1],
  [15, 7, 15, 7, 3],
  [16, 4, 20, 5, 1],
  [16, 6, 16, 6, 2],
])("K1 %i whiskeys by %i: b = %i, r = %i, lambda = %i", (v, k, b, r, lambda) => {
  const blocks = balancedBlocks(v, k);
  expect(blocks?.length).toBe(b);
  expect(blockBalance(blocks ?? [], v)).toMatchObject({
    servings: [r, r],
    meetings: [lambda, lambda],
    connected: true,
  });
});

test("K1 every design on file is balanced, whatever size is asked for", () => {
  const missing: string[] = [];
  for (let v = 3; v <= 16; v += 1) {
    for (let k = 2; k < v; k += 1) {
      const blocks = balancedBlocks(v, k);
      if (blocks === null) missing.push(`${v}.${k}`);
      else {
        const { servings, meetings, connected } = blockBalance(blocks, v);
        expect([servings[0], meetings[0], connected], `${v}.${k}`).toEqual([servings[1], meetings[1], true]);
        // r(k − 1) = λ(v − 1) and bk = vr hold of any such design.
        expect(servings[0] * (k - 1)).toBe(meetings[0] * (v - 1));
        expect(blocks.length * k).toBe(v * servings[0]);
      }
    }
  }
  console.log(`no balanced design on file for v.k = ${missing.join(" ")}`);
  expect(STARTERS.length).toBe(15);
});

test("K1 sizes out of range throw, blocks that are none throw", () => {
  expect(() => balancedBlocks(17, 4)).toThrow("balancedBlocks requires a whole 3 to 16 whiskeys, got 17");
  expect(() => balancedBlocks(5, 5)).toThrow("balancedBlocks requires a whole 2 to 4 glasses, got 5");
  expect(() => blockBalance([[0, 0]], 3)).toThrow("row 0 to name 2 of 0 to 2, got [0,0]");
  expect(() => blockBalance([[0, 1], [0]], 3)).toThrow("row 1");
  expect(blockBalance([], 0)).toMatchObject({ servings: [0, 0], meetings: [0, 0] });
});
