import { expect, test } from "vitest";
import oracle from "./binomial.oracle.json" with { type: "json" };
import {
  binomialPower,
  binomialTail,
  criticalCount,
  type Fraction,
  quotient,
  trialsNeeded,
} from "./index.ts";

const fraction = ([numerator = 0, denominator = 1]: readonly number[]): Fraction => ({
  numerator: BigInt(numerator),
  denominator: BigInt(denominator),
});

test.each([
  ["triangle (ISO 4120; tetrad has the same chance)", oracle.triangle],
  ["duo-trio (ISO 10399 table A.1)", oracle.duoTrio],
  ["paired, one-sided (ISO 5495 table A.1)", oracle.paired],
])("N2 every critical count of the published %s table is found", (_, { p0, alphas, rows }) => {
  let cells = 0;
  for (const [n = 0, ...counts] of rows) {
    for (const [i, alpha] of alphas.entries()) {
      expect(criticalCount(n ?? 0, fraction(p0), alpha), `n = ${n}, alpha = ${alpha}`).toBe(counts[i]);
      cells += 1;
    }
  }
  expect(cells).toBe(rows.length * alphas.length);
});

test("N1 ISO 5495 table A.3: the largest count whose lower tail is beta or less when some can tell", () => {
  for (const [n = 0, beta = 0, ...largest] of oracle.similarity.rows) {
    for (const [i, share] of oracle.similarity.shares.entries()) {
      const printed = largest[i] ?? null;
      if (printed === null) continue;
      const p = fraction([100 + share, 200]);
      const atMost = (k: number): number => {
        const { numerator, denominator } = binomialTail(n ?? 0, k + 1, p);
        return quotient(denominator - numerator, denominator);
      };
      expect(atMost(printed), `n = ${n}, ${share} %`).toBeLessThanOrEqual(beta ?? 0);
      expect(atMost(printed + 1)).toBeGreaterThan(beta ?? 0);
    }
  }
});

test.each(oracle.needed.rows.map((row) => [JSON.stringify(row), row] as const))(
  "N3 trials needed, counted with exact fractions elsewhere: %s",
  (_, row) => {
    const [p0, p1, beta, smallest, criticalAtSmallest, stable, criticalAtStable, power] = row as [
      number[],
      number[],
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const ask = { p0: fraction(p0), p1: fraction(p1), alpha: 0.05, beta };
    expect(trialsNeeded(ask)).toEqual({ smallest, criticalAtSmallest, stable, criticalAtStable });
    expect(binomialPower(smallest, ask)).toBeCloseTo(power, 14);
  },
);

// ISO 4120 table A.3, alpha 0.05, from memory: 50 % of distinguishers, beta 0.20, 0.10, 0.05, then 30 %.
test.each([
  [50, 0.2, 16],
  [50, 0.1, 20],
  [50, 0.05, 23],
  [30, 0.2, 40],
  [30, 0.1, 53],
  [30, 0.05, 66],
])(
  "N3 triangle, %i %% distinguishers, beta %d: %i assessors (ISO 4120 table A.3, from memory)",
  (pd, beta, n) => {
    const p1 = fraction([100 + 2 * pd, 300]);
    expect(trialsNeeded({ p0: fraction([1, 3]), p1, alpha: 0.05, beta })?.smallest).toBe(n);
  },
);
