import fc from "fast-check";
import { expect, test } from "vitest";
import { fillNormal, repeatableRng, signFlipTest, whatDiffers } from "./index.ts";

const long = process.env["PARTSPROOF_LONG"] === "1";
const rng = repeatableRng(26);

test("V8 one attribute's own p is that of flipping signs; together it is never smaller, and one alone costs nothing", () => {
  const tables = fc
    .tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 4 }))
    .chain(([judges, attributes]) =>
      fc.array(fc.array(fc.integer({ min: -4, max: 4 }), { minLength: attributes, maxLength: attributes }), {
        minLength: judges,
        maxLength: judges,
      }),
    );
  fc.assert(
    fc.property(tables, (table) => {
      const { attributes, method } = whatDiffers(table, rng);
      expect(method).toBe("exact");
      for (const { attribute, mean, p, pTogether } of attributes) {
        const alone = signFlipTest(table.map((row) => row[attribute] ?? 0));
        expect(p).toBeCloseTo(alone.p, 12);
        expect(mean).toBeCloseTo(alone.mean, 12);
        expect(pTogether).toBeGreaterThanOrEqual(p);
        const [single] = whatDiffers(
          table.map((row) => [row[attribute] ?? 0]),
          rng,
        ).attributes;
        expect(single?.pTogether).toBeCloseTo(p, 12);
      }
    }),
  );
});

test("V8 six judges of one mind on one attribute: 2 of 64, also together with attributes that say nothing", () => {
  const [first, second] = whatDiffers(
    Array.from({ length: 6 }, () => [0, 1]),
    rng,
  ).attributes;
  expect(first).toEqual({ attribute: 1, mean: 1, p: 2 / 64, pTogether: 2 / 64 });
  expect(second).toMatchObject({ attribute: 0, p: 1, pTogether: 1 });
  expect(
    whatDiffers(
      Array.from({ length: 20 }, (_, i) => [i - 3]),
      rng,
    ).method,
  ).toBe("drawn");
  expect(() => whatDiffers([], rng)).toThrow("whatDiffers requires 1 rows or more, got 0");
});

test("V8 where nothing differs anything is found in at most 5 % of tables, attributes hanging together", () => {
  const runs = long ? 2000 : 150;
  const draws = new Float64Array(8);
  let found = 0;
  for (let run = 0; run < runs; run += 1) {
    const table = Array.from({ length: 8 }, () => {
      fillNormal(draws, rng);
      return Array.from({ length: 6 }, (_, a) => (draws[a] ?? 0) + (draws[7] ?? 0));
    });
    if ((whatDiffers(table, rng).attributes[0]?.pTogether ?? 1) <= 0.05) found += 1;
  }
  console.log(
    `LONG what differs | ${runs} tables of 8 judges and 6 attributes | found where nothing is: ${((100 * found) / runs).toFixed(1)} % at 5 %`,
  );
  expect(found / runs).toBeLessThan(0.05 + 4 * Math.sqrt(0.0475 / runs));
}, 120_000);
