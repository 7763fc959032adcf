import type { Condition, SlotRule } from "./rule.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import type { SlotSide } from "./slot-sides.ts";

/** By side. */
type Values = readonly (number | null)[];

type LoosestRule = {
  /** Null where no rule of so few conditions leaves out every whiskey that is too far. */
  readonly rule: SlotRule | null;
  /** True when no other rule of these sides and so few conditions lets in more of the near. */
  readonly proven: boolean;
};

/**
 * Of all rules that set at most `most` of these bounds, that the original keeps, and that leave out every whiskey of `far`: one that lets in the
 * most of `near`; of these one with the fewest conditions. What is not known of a whiskey keeps it out, as in a filling.
 *
 * Exact search: as long as a far one is let in, one side or another has to leave it out, so trying each side in turn misses nothing; a branch that
 * lets in no more than the best found is not followed. Given up after `steps` branches, and then not proven.
 */
export function loosestRule(
  original: RuledWhiskey,
  sides: readonly SlotSide[],
  near: readonly RuledWhiskey[],
  far: readonly RuledWhiskey[],
  { most = 4, steps = 20_000 }: { readonly most?: number; readonly steps?: number } = {},
): LoosestRule {
  const own = sides.map(({ value }) => value(original));
  const valuesOf = (whiskey: RuledWhiskey): Values => sides.map(({ value }) => value(whiskey));
  const [nears, fars] = [near.map(valuesOf), far.map(valuesOf)];
  /** By side: what is left out with all below it; a side that is not set leaves out nothing. */
  type Set = ReadonlyMap<number, number>;
  const letIn = (set: Set, values: Values): boolean =>
    [...set].every(([side, out]) => values[side] !== null && values[side]! > out);
  /** The bound as the language can print it, which keeps what it should: the nearest that is let in, and the original. */
  const conditionOf = (side: number, out: number): Condition | null => {
    const above = [...nears, own].flatMap((values) => values[side] ?? []).filter((value) => value > out);
    return own[side] === null || own[side]! <= out
      ? null
      : sides[side]!.asking(out, Math.min(...above, own[side]!));
  };
  /** What to leave out so that this one is: its value; where that is not known, the least there is, since any bound keeps it out. */
  const lowest = sides.map((_, side) => {
    const values = [...nears, ...fars].flatMap((one) => one[side] ?? []);
    return values.length === 0 ? null : Math.min(...values);
  });
  const outFor = (side: number, values: Values): number | null => values[side] ?? lowest[side] ?? null;
  let best: { readonly set: Set; readonly count: number } | null = null;
  let left = steps;
  const walk = (set: Set, nearIn: readonly Values[], farIn: readonly Values[]): void => {
    left -= 1;
    if (left < 0) return;
    if (
      best !== null &&
      (nearIn.length < best.count || (nearIn.length === best.count && set.size >= best.set.size))
    )
      return;
    if (farIn.length === 0) {
      best = { set, count: nearIn.length };
      return;
    }
    const options = (values: Values): readonly number[] =>
      sides.flatMap((_, side) => {
        const out = outFor(side, values);
        if (out === null || (!set.has(side) && set.size >= most)) return [];
        return conditionOf(side, out) === null ? [] : [side];
      });
    // The one that can be left out in the fewest ways.
    let [hardest, ways] = [farIn[0]!, options(farIn[0]!)];
    for (const values of farIn.slice(1)) {
      const one = options(values);
      if (one.length < ways.length) [hardest, ways] = [values, one];
    }
    const tried = ways.map((side) => {
      const next = new Map(set).set(side, outFor(side, hardest)!);
      return { next, nearIn: nearIn.filter((values) => letIn(next, values)) };
    });
    // The loosest first, so that the rest is soon not worth following.
    for (const { next, nearIn: kept } of tried.toSorted(
      (a, b) => b.nearIn.length - a.nearIn.length || a.next.size - b.next.size,
    ))
      walk(
        next,
        kept,
        farIn.filter((values) => letIn(next, values)),
      );
  };
  walk(new Map(), nears, fars);
  const found = best as { readonly set: Set } | null;
  const proven = left >= 0;
  if (found === null) return { rule: null, proven };
  const conditions = [...found.set]
    .toSorted(([a], [b]) => a - b)
    .map(([side, out]) => conditionOf(side, out)!);
  return { rule: together(conditions), proven };
}

/** Two bounds of one thing are one condition: 46 to 60 %. */
function together(conditions: readonly Condition[]): SlotRule {
  const rule: Condition[] = [];
  for (const condition of conditions) {
    const at = rule.findIndex((other) => sameThing(other, condition));
    const other = rule[at];
    if (other === undefined || !("low" in other) || !("low" in condition)) rule.push(condition);
    else rule[at] = { ...other, low: other.low ?? condition.low, high: other.high ?? condition.high };
  }
  return rule;
}

const sameThing = (one: Condition, two: Condition): boolean => {
  const bare = (condition: Condition): string => JSON.stringify({ ...condition, low: 0, high: 0 });
  return "low" in one && "low" in two && bare(one) === bare(two);
};
