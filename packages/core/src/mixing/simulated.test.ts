import { describe, expect, test } from "vitest";
import { mixedBy } from "../blending/index.ts";
import { exactShare } from "../statistics/index.ts";
import { type Nature, simulatedHousehold, type Truth } from "./fixtures/simulated-mixes.ts";
import { learnMixing, type MixingLaw } from "./learn-mixing.ts";

// 400 households a row under `npm run long`; every time so few that the tables only show that all of it runs.
const long = process.env["PARTSPROOF_LONG"] === "1";
const count = long ? 400 : 24;
const BLENDS = long ? [3, 6, 9, 15, 25] : [6, 15];

interface Learned {
  readonly found: MixingLaw;
  /** Mean squares of how far off mixes that nobody noted are, by the mean and by the law that was found. */
  readonly byMean: number;
  readonly byLaw: number;
}

function learned(nature: Nature, from: number): Learned[] {
  return Array.from({ length: count }, (_, n) => {
    const { parts, mixes, unseen } = simulatedHousehold(from + n, nature);
    const found = learnMixing({ parts, mixes });
    const off = (exponent: number): number =>
      unseen.reduce(
        (sum, { shares, noted, truth }) => sum + (mixedBy(exponent, shares, noted) - truth) ** 2,
        0,
      ) / unseen.length;
    return { found, byMean: off(1), byLaw: off(found.exponent) };
  });
}

function share(of: number, all: number): string {
  const { low, high } = exactShare(of, all, 0.95, "both");
  const percent = (part: number): string => (100 * part).toFixed(1);
  return `${of} of ${all} (${percent(of / all)} %, ${percent(low)} to ${percent(high)})`;
}
const rootMean = (squares: readonly number[]): number =>
  Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
const says = (line: string): void => console.log(long ? `LONG mixing ${line}` : line);

describe("on simulated households", { timeout: 3_000_000 }, () => {
  test.each([
    ["notes as rough as they say", { rougher: 1, astray: 0 }],
    ["notes 1.4 times as rough, one of twelve astray", { rougher: 1.4, astray: 1 / 12 }],
  ])("M2 the mean is kept where it is true, %s", (how, rough) => {
    let [all, wrong] = [0, 0];
    for (const mixes of BLENDS) {
      const told = learned({ truth: "mean", mixes, ...rough }, 10_000 * mixes);
      const astray = told.filter(({ found }) => found.law !== "mean").length;
      says(`mean, ${how}, ${mixes} blends | another law in ${share(astray, told.length)}`);
      all += told.length;
      wrong += astray;
    }
    says(`mean, ${how}, all | another law in ${share(wrong, all)}`);
    expect(wrong / all).toBeLessThan(1 / 40);
  });

  test.each([
    ["power", 0.4],
    ["strongest", 0.7],
  ] as const)("M3 %s is found, and foretells mixes not noted yet better", (truth: Truth, most) => {
    const rows = BLENDS.map((mixes) => {
      const told = learned({ truth, mixes }, 500_000 + 10_000 * mixes);
      const bent = told.filter(({ found }) => found.law !== "mean");
      const exact = bent.filter(({ found }) => found.law === truth);
      const mean = rootMean(bent.map((one) => one.byMean));
      const law = rootMean(bent.map((one) => one.byLaw));
      const all = [told.map((one) => one.byMean), told.map((one) => one.byLaw)].map(rootMean);
      says(
        `${truth}, ${mixes} blends | not the mean in ${share(bent.length, told.length)}, this very law in ${share(exact.length, told.length)} | mixes not noted, where found: off by ${mean.toFixed(2)} by the mean, ${law.toFixed(2)} by the law; in all: ${all.map((off) => off.toFixed(2)).join(", ")}`,
      );
      return { found: bent.length / told.length, mean, law };
    });
    for (const { mean, law } of rows) expect(law).toBeLessThan(mean);
    expect(rows.at(-1)?.found).toBeGreaterThan(most);
  });
});
