import { describe, expect, test } from "vitest";
import { attributeBelief } from "./attribute-belief.ts";
import { contrasts } from "./contrasts.ts";
import { LABEL_SIZE } from "./label-numbers.ts";
import { meanOf, throughCore, withNumbers } from "./level-sum.ts";
import oracle from "./palate.oracle.json" with { type: "json" };
import { addSlopes, noSlopes } from "./state-slopes.ts";
import type { AttributeStudy } from "./studied.ts";
import { studyOf } from "./study.ts";
import type { TableState } from "./table-state.ts";
import { teachesMost } from "./teaches-most.ts";

type Case = (typeof oracle.cases)[number];

const label = { ageYears: null, abv: 46, kind: "malt", grains: null, casks: null };

/** A case as the sums have it; labels and effects are the case's own. */
function studied(one: Case): { study: AttributeStudy; labels: Float64Array[]; state: TableState } {
  const { attributes } = studyOf(
    one.labels.map((_, i) => ({ id: `${i}`, label })),
    one.said.map((mean, n) => ({
      taster: `${one.taster[n]}`,
      parts: one.parts[n] as Record<string, number>,
      says: { x: { mean, sd: one.own[n] ?? 1 } },
    })),
  );
  const [attribute] = attributes as [AttributeStudy];
  return {
    study: { ...attribute, effects: Float64Array.from(one.means) },
    labels: one.labels.map((numbers) => Float64Array.from(numbers)),
    state: {
      apart: Float64Array.of(one.apart),
      mixing: one.mixing,
      bias: one.bias,
      noise: Float64Array.from(one.noise),
      offset: Float64Array.from(one.offset),
      stretch: Float64Array.from(one.stretch),
      rows: contrasts(one.noise.length),
    },
  };
}

// How a whiskey strays from its label hangs on the labels of `studyOf`: put right for the case's own.
const withLabels = (study: AttributeStudy, labels: readonly Float64Array[]): AttributeStudy => ({
  ...study,
  whiskeys: study.whiskeys.map((whiskey, i) => ({
    ...whiskey,
    stray: {
      ...whiskey.stray,
      base: whiskey.stray.base.map((by, at) => {
        const place = whiskey.stray.places[at] ?? 0;
        return place < LABEL_SIZE ? -(labels[i]?.[place] ?? 0) : by;
      }),
    },
  })),
});

describe("P2 the law of levels, given the table's state, is the joint normal law conditioned by numpy", () => {
  test.each(oracle.cases.map((one, i) => [i, one] as const))("case %i", (_, one) => {
    const { study, labels, state } = studied(one);
    const belief = attributeBelief(study, labels, one.apart, state);
    expect(belief.logLikelihood).toBeCloseTo(one.logLikelihood, 8);
    const sums = study.whiskeys.map(({ level }) => level);
    for (const [i, sum] of sums.entries()) {
      expect(meanOf(belief, sum)).toBeCloseTo(one.levelMeans[i] ?? Number.NaN, 8);
      const withCore = withNumbers(belief, sum, 0, study.core);
      for (const [j, other] of sums.entries()) {
        const own = i === j && sum.leaf >= 0 ? (belief.leafVariance[sum.leaf] ?? 0) : 0;
        expect(throughCore(withCore, belief, other) + own).toBeCloseTo(
          one.levelCovariance[i]?.[j] ?? Number.NaN,
          8,
        );
      }
    }
  });
});

test("P2 slopes are those of the log likelihood, by its differences", () => {
  const one = oracle.cases[2] as Case;
  const { study: plain, labels, state } = studied(one);
  const study = withLabels(plain, labels);
  const at = (change: Partial<TableState>, apart = one.apart): number =>
    attributeBelief(study, labels, apart, { ...state, ...change }).logLikelihood;
  const slopes = noSlopes(one.noise.length);
  const belief = attributeBelief(study, labels, one.apart, state);
  const apart = addSlopes(study, one.apart, state, belief, slopes);
  const h = 1e-5;
  const slope = (f: (by: number) => number): number => (f(h) - f(-h)) / (2 * h);
  expect(apart).toBeCloseTo(
    slope((by) => at({}, one.apart * Math.exp(by))),
    4,
  );
  expect(slopes.mixing).toBeCloseTo(
    slope((by) => at({ mixing: one.mixing * Math.exp(by) })),
    4,
  );
  expect(slopes.bias).toBeCloseTo(
    slope((by) => at({ bias: one.bias * Math.exp(by) })),
    4,
  );
  for (const t of one.noise.keys()) {
    const moved = (all: Float64Array, to: (x: number) => number) => all.with(t, to(all[t] ?? 0));
    expect(slopes.noise[t]).toBeCloseTo(
      slope((by) => at({ noise: moved(state.noise, (x) => x * Math.exp(by)) })),
      4,
    );
    expect(slopes.offset[t]).toBeCloseTo(
      slope((by) => at({ offset: moved(state.offset, (x) => x + by) })),
      4,
    );
    expect(slopes.stretch[t]).toBeCloseTo(
      slope((by) => at({ stretch: moved(state.stretch, (x) => x * Math.exp(by)) })),
      4,
    );
  }
});

test.each(oracle.teaches)(
  "P6 what a note takes off the variances is what numpy's conditional law says",
  (one) => {
    const whiskeys = one.shares.map((_, i) => `${i}`);
    const learned = {
      whiskeys,
      tasters: [],
      mixing: one.mixing,
      bias: 0,
      attributes: one.covariances.map((covariance, a) => ({
        id: `${a}`,
        means: new Float64Array(4),
        covariance: Float64Array.from(covariance.flat()),
        apart: 1,
        alone: new Int32Array(4),
        inMixes: new Int32Array(4),
        spoken: one.spoken[a] ?? 0,
        noteVariance: one.noteVariance[a] ?? 0,
      })),
    };
    const parts = Object.fromEntries(one.shares.map((share, i) => [`${i}`, share]));
    const { glasses } = teachesMost(learned, [{ id: "glass", parts }], one.about.map(String));
    expect(glasses[0]?.share).toBeCloseTo(one.share, 9);
  },
);
