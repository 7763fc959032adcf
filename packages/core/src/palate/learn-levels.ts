import type { AttributeBelief } from "./attribute-belief.ts";
import { type LearnedTable, learnTable } from "./learn-table.ts";
import { meanOf, throughCore, withNumbers } from "./level-sum.ts";
import type { AttributeStudy, Study } from "./studied.ts";
import { studyOf } from "./study.ts";
import type { LabelledWhiskey, TableNote } from "./told.ts";

/** How a taster uses the scale against the table's own: says 5 + offset + stretch × (level − 5), off by `noise` besides. */
export interface TasterScale {
  readonly taster: string;
  readonly offset: number;
  readonly stretch: number;
  readonly noise: number;
}

/** Levels of one attribute in all whiskeys: a normal law. */
export interface AttributeLevels {
  readonly id: string;
  readonly means: Float64Array;
  /** Whiskeys × whiskeys, row after row. */
  readonly covariance: Float64Array;
  /** How far whiskeys of like labels lie apart in it. */
  readonly apart: number;
  /** Sayings of each whiskey by itself, and of mixes that held it. */
  readonly alone: Int32Array;
  readonly inMixes: Int32Array;
  /** Share of all notes that speak of it, and by how much one is off, squared: words, taster's noise and bias. */
  readonly spoken: number;
  readonly noteVariance: number;
}

export interface LearnedLevels {
  /** The order of whiskeys in `attributes`. */
  readonly whiskeys: readonly string[];
  /** Attributes of which anything was said, in the order of their ids. */
  readonly attributes: readonly AttributeLevels[];
  readonly tasters: readonly TasterScale[];
  /** How far a half-and-half mix is off the mean of its parts, and a taster off the table in one attribute. */
  readonly mixing: number;
  readonly bias: number;
}

/**
 * What each whiskey tastes of to a table, from its labels and from notes of whiskeys and of mixes, each taster's use of the scale, bias
 * and noise learned besides. Levels are on the table's own scale, that of its tasters in common: one taster alone is the table.
 *
 * A normal law, attribute by attribute, which may reach past 0 and 10: whoever shows a level holds it within the scale. What was not
 * spoken of says nothing; where people write only of what they taste strongly, levels of what they left out come out too high.
 *
 * 60 whiskeys and 300 notes that speak of all of 40 attributes take some two seconds of one processor; some dozens of notes, far less.
 *
 * @returns no attribute where nothing was said
 * @throws RangeError as `studyOf`
 * @example
 * learnLevels(
 *   [{ id: "malt", label: { ageYears: 12, abv: 46, kind: "malt", grains: null, casks: null } }],
 *   [{ taster: "wren", parts: { malt: 1 }, says: { "smoke.smoke": { mean: 6, sd: 1 } } }],
 * ).attributes[0].means[0] // between 2 (the label) and 6 (the note)
 */
export function learnLevels(
  whiskeys: readonly LabelledWhiskey[],
  notes: readonly TableNote[],
): LearnedLevels {
  const study = studyOf(whiskeys, notes);
  const table = learnTable(study);
  const { state } = table;
  return {
    whiskeys: study.ids,
    attributes: study.attributes.map((attribute, i) => levelsOf(study, attribute, i, table)),
    tasters: study.tasters.map((taster, t) => ({
      taster,
      offset: state.offset[t] as number,
      stretch: state.stretch[t] as number,
      noise: state.noise[t] as number,
    })),
    mixing: state.mixing,
    bias: state.bias,
  };
}

function levelsOf(study: Study, attribute: AttributeStudy, at: number, table: LearnedTable): AttributeLevels {
  const belief = table.beliefs[at] as AttributeBelief;
  const count = study.ids.length;
  const sums = attribute.whiskeys.map(({ level }) => level);
  const means = Float64Array.from(sums, (sum) => meanOf(belief, sum));
  const slopes = meanSlopes(table, attribute, at, means);
  const covariance = new Float64Array(count * count);
  for (const [i, sum] of sums.entries()) {
    const withCore = withNumbers(belief, sum, 0, attribute.core);
    const carried = slopes.carried[i] as Float64Array;
    for (let j = 0; j <= i; j += 1) {
      const both =
        throughCore(withCore, belief, sums[j] as typeof sum) + dot(carried, slopes.own[j] as Float64Array);
      covariance[i * count + j] = both;
      covariance[j * count + i] = both;
    }
    if (sum.leaf >= 0)
      covariance[i * count + i] =
        (covariance[i * count + i] as number) + (belief.leafVariance[sum.leaf] as number);
  }
  const alone = new Int32Array(count);
  const inMixes = new Int32Array(count);
  for (const number of attribute.liquid) {
    const { parts, mixed } = attribute.liquids[number] as AttributeStudy["liquids"][number];
    const counted = mixed === 0 ? alone : inMixes;
    for (const [i] of parts) counted[i] = (counted[i] as number) + 1;
  }
  return {
    id: attribute.id,
    means,
    covariance,
    apart: table.state.apart[at] as number,
    alone,
    inMixes,
    spoken: attribute.said.length / study.notes,
    noteVariance: noteVarianceOf(attribute, table),
  };
}

function noteVarianceOf({ own, taster }: AttributeStudy, { state }: LearnedTable): number {
  let sum = 0;
  for (let n = 0; n < own.length; n += 1)
    sum += (own[n] as number) + (state.noise[taster[n] as number] as number) ** 2;
  return sum / own.length + (state.offset.length > 1 ? state.bias ** 2 : 0);
}

/** How each whiskey's mean moves with the table's numbers, and that times how far those may be off. */
function meanSlopes(
  { beside, covariance, at: numbers }: LearnedTable,
  attribute: AttributeStudy,
  at: number,
  means: Float64Array,
) {
  const size = numbers.length;
  const shared = beside.length - 1;
  const chosen = beside.map((_, j) => (j < shared ? j : shared + at));
  const moved = beside.map(({ step, looked }) => {
    const belief = looked.beliefs[at] as AttributeBelief;
    return attribute.whiskeys.map(({ level }, i) => (meanOf(belief, level) - (means[i] as number)) / step);
  });
  const own = Array.from(means, (_, i) => Float64Array.from(moved, (by) => by[i] as number));
  const carried = own.map((slope) =>
    slope.map((_, j) => {
      let sum = 0;
      for (const [m, k] of chosen.entries())
        sum += (covariance[(chosen[j] as number) * size + k] as number) * (slope[m] as number);
      return sum;
    }),
  );
  return { own, carried };
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
};
