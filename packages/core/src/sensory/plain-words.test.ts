import fc from "fast-check";
import { expect, test } from "vitest";
import { friedman } from "../statistics/index.ts";
import { plainChance, plainOdds, rankingWords } from "./index.ts";

test.each([
  [1, "everybody"],
  [0.9999, "more than 99 in 100"],
  [455 / 720, "about 63 in 100"],
  [0.5, "one in two"],
  [7 / 24, "about 29 in 100"],
  [0.125, "one in eight"],
  [11 / 120, "about one in 11"],
  [1 / 24, "one in 24"],
  [16 / 720, "one in 45"],
  [1 / 120, "one in 120"],
  [1 / 40320, "one in 40,320"],
  [0.0012345, "about one in 810"],
  [1 / 3628800, "about one in 3.6 million"],
  [1e-10, "fewer than one in a thousand million"],
  [0, "nobody"],
])("P1 %d is %s", (p, words) => {
  expect(plainOdds(p)).toBe(words);
  expect(plainChance(p)).toBe(`${words} would do as well by guessing`);
});

/** Reads the words back into a number. */
function read(words: string): number {
  const inHundred = /^about (\d+) in 100$/.exec(words);
  if (inHundred) return Number(inHundred[1]) / 100;
  const [, n = "", million] = /^(?:about )?one in ([\d.,a-z]+?)( million)?$/.exec(words) ?? [];
  const small = "two three four five six seven eight nine ten".split(" ").indexOf(n);
  const plain = small < 0 ? Number(n.replaceAll(",", "")) : small + 2;
  return 1 / (plain * (million ? 1e6 : 1));
}

test("P1 the words lie within 5 % of p, or half in a hundred, and are exact when they say so", () => {
  const ps = fc.oneof(
    fc.double({ min: 1e-9, max: 0.994, noNaN: true }),
    fc.integer({ min: 2, max: 1e6 }).map((n) => 1 / n),
    fc.double({ min: -8.9, max: -0.01, noNaN: true }).map((x) => 10 ** x),
  );
  fc.assert(
    fc.property(ps, (p) => {
      const words = plainOdds(p);
      const back = read(words);
      const off = words.endsWith("in 100") ? Math.abs(back - p) / 0.005 : Math.abs(p / back - 1) / 0.05;
      expect(off).toBeLessThan(words.startsWith("about") ? 1.003 : 1e-9);
    }),
    { numRuns: 2000 },
  );
});

test("P1 numbers that are no probability throw", () => {
  for (const p of [-0.1, 1.1, Number.NaN]) expect(() => plainOdds(p)).toThrow("from 0 to 1");
});

test("P2 words, p, method and panel", () => {
  const agreed = (judges: number) => Array.from({ length: judges }, () => [1, 2, 3]);
  expect(rankingWords(friedman(agreed(3)))).toBe(
    "The agreement is hard to put down to luck (p = 0.028, Friedman's test, exact, 3 tasters, 3 glasses).",
  );
  expect(rankingWords(friedman(agreed(2)))).toBe(
    "The agreement does not rule luck out (p = 0.17, Friedman's test, exact, 2 tasters, 3 glasses).",
  );
  expect(rankingWords(friedman(agreed(6), { exactStepLimit: 0 }))).toBe(
    "The agreement is very hard to put down to luck (p = 0.0025, Friedman's test, chi-square approximation, 2 degrees of freedom, 6 tasters, 3 glasses).",
  );
  expect(rankingWords(friedman([[1, 2]]))).toBe(
    "One ranking has nothing to agree with: no test can be made (1 taster, 2 glasses).",
  );
  expect(rankingWords(friedman([[1, 1]]))).toBe(
    "Nobody told any of the glasses apart: every ranking is one big tie (1 taster, 2 glasses).",
  );
});

test("P2 the printed p lies on the verdict's side of 0.2, 0.05 and 0.01", () => {
  const base = friedman([
    [1, 2, 3],
    [1, 2, 3],
    [1, 2, 3],
  ]);
  if (!base.ok) throw new Error(base.code);
  for (const p of [0.0499999, 0.05, 0.050001, 0.00999, 0.01, 0.0100001, 0.3, 0.0004, 0.199999, 0.2]) {
    const words = rankingWords({ ...base, p });
    const shown = Number(/p [=<] ([\d.e-]+)/.exec(words)?.[1]);
    const verdict =
      p < 0.01
        ? "is very hard"
        : p < 0.05
          ? "is hard"
          : p < 0.2
            ? "does not rule luck out"
            : "could well be luck";
    expect(words).toContain(verdict);
    expect(shown < 0.2).toBe(p < 0.2);
    expect(shown < 0.05).toBe(p < 0.05);
    expect(shown < 0.01).toBe(p < 0.01);
  }
});
