import { expect, test } from "vitest";
import { matchLaw } from "./index.ts";
// Rencontres numbers, OEIS A008290; the file lists cases and upper tails for n = 2 to 12.
import reference from "./matching.oracle.json" with { type: "json" };

const once = (n: number) => Object.fromEntries(Array.from({ length: n }, (_, i) => [`label ${i}`, 1]));

test.each(reference.rencontres)("M2 n = $n different labels give the rencontres numbers", (row) => {
  const law = matchLaw({ rows: once(row.n), columns: once(row.n) });
  expect(law.exactly).toEqual(row.exactly_k.map(BigInt));
  expect(law.total).toBe(BigInt(row.total));
  expect(law.mean).toBe(1);
  row.p_at_least_k.forEach((p, k) => expect(law.pAtLeast(k)).toBe(p));
  row.p_at_least_k_fraction.forEach((fraction, k) => {
    const [numerator = 0n, denominator = 1n] = fraction.split("/").map(BigInt);
    const ours = law.fractionAtLeast(k);
    expect(ours.numerator * denominator).toBe(numerator * ours.denominator);
  });
});

test("M2 variance is 1 for two or more labels", () => {
  const { exactly, total } = matchLaw({ rows: once(9), columns: once(9) });
  expect(exactly.reduce((sum, cases, k) => sum + BigInt((k - 1) ** 2) * cases, 0n)).toBe(total);
});

test("M3 card matching: two packs of 52 by rank, P(no match) = 0.0162 (Riordan 1958; value from memory)", () => {
  const suits = Object.fromEntries(Array.from({ length: 13 }, (_, i) => [`rank ${i}`, 4]));
  expect(1 - matchLaw({ rows: suits, columns: suits }).pAtLeast(1)).toBeCloseTo(0.0162, 4);
});

test("M3 tasting tea: 4 and 4 cups, all right is 1 in 70 (Fisher, The Design of Experiments, 1935, ch. II)", () => {
  const cups = { milk: 4, tea: 4 };
  expect(matchLaw({ rows: cups, columns: cups }).fractionAtLeast(8)).toEqual({
    numerator: 1n,
    denominator: 70n,
  });
});
