import { axesOf } from "./axes.ts";
import type { FillProblem, Original } from "./fill-problem.ts";
import { measureFilling } from "./filling.ts";
import { loosestRule } from "./loosest-rule.ts";
import type { SlotRule } from "./rule.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import { slotSides } from "./slot-sides.ts";
import { verdictOf } from "./verdict.ts";
import { worstTogether } from "./worst-together.ts";

export type LooseProblem = Pick<FillProblem, "weights" | "waterTo"> & {
  /** What the recipe has in each slot. */
  readonly slots: readonly { readonly parts: number; readonly whiskey: RuledWhiskey }[];
  readonly original: Original;
  /** Whiskeys that rules are tried on: those of a shelf, or all that one knows. */
  readonly known: readonly RuledWhiskey[];
  /** The most that the result may be off the original, in points of 10. */
  readonly within: number;
  /** `one`: one slot filled anew, the others as they are. `all`: every slot filled anew at once. */
  readonly changing: "one" | "all";
};

export type LooseSlot = {
  /** Null where no rule of four conditions holds: then only the whiskey itself stands here. */
  readonly rule: SlotRule | null;
  readonly proven: boolean;
  /** By id: whiskeys it lets in, those near enough that it keeps out all the same, those it rightly keeps out. */
  readonly lets: readonly string[];
  readonly keepsOutNear: readonly string[];
  readonly keepsOut: readonly string[];
  /** Too little is known of these to say how far off they are; whether the rule lets them in is not counted. */
  readonly notJudged: readonly string[];
  /** The farthest of those let in, one slot changed; null where none is. */
  readonly farthest: number | null;
};

export type LooseRules = {
  readonly slots: readonly LooseSlot[];
  /** Each slot by itself is held to this, so that `changing` is held to `within`. */
  readonly eachWithin: number;
  /** All slots filled anew at once, by judged whiskeys these rules let in: at most this far off. */
  readonly together: number;
};

const HALVINGS = 8;

/**
 * For each slot the loosest rule that keeps the result within a distance, as far as the known whiskeys tell: every one that it lets in, and of which enough is
 * known to judge it, is near enough; and no rule of its kind lets in more of them.
 *
 * @throws RangeError when there is nothing to come close to
 */
export function loosestRules(problem: LooseProblem): LooseRules {
  const { within, changing } = problem;
  const first = rulesWithin(problem, within);
  if (changing === "one" || first.together <= within) return first;
  let [good, bad] = [0, within];
  let best = rulesWithin(problem, 0);
  for (let n = 0; n < HALVINGS; n += 1) {
    const middle = (good + bad) / 2;
    const tried = rulesWithin(problem, middle);
    if (tried.together <= within) [good, best] = [middle, tried];
    else bad = middle;
  }
  return best;
}

function rulesWithin(problem: LooseProblem, eachWithin: number): LooseRules {
  const { slots, known } = problem;
  const measured: FillProblem = {
    ...problem,
    whiskeys: [...known, ...slots.map(({ whiskey }) => whiskey)],
    slots: slots.map(({ parts }) => ({ parts, rule: [] })),
  };
  const axes = axesOf(measured);
  const originals = slots.map(({ whiskey }) => whiskey);
  const may: RuledWhiskey[][] = [];
  const found = slots.map(({ whiskey }, slot): LooseSlot => {
    const others = known.filter(({ id }) => id !== whiskey.id);
    const off = new Map(
      others.map((one) => [one.id, measureFilling(measured, originals.with(slot, one), axes)] as const),
    );
    const near = others.filter(({ id }) => off.get(id)!.distance <= eachWithin);
    const far = others.filter(({ id }) => off.get(id)!.least > eachWithin);
    const { rule, proven } = loosestRule(whiskey, slotSides(whiskey, axes.attributes), near, far);
    const keeps = (one: RuledWhiskey): boolean =>
      rule !== null &&
      rule.every((condition) => condition.about === "same" || verdictOf(condition, one).state === "kept");
    const lets = near.filter(keeps);
    may.push([whiskey, ...lets]);
    const ids = (some: readonly RuledWhiskey[]): readonly string[] => some.map(({ id }) => id);
    return {
      rule,
      proven,
      lets: ids(lets),
      keepsOutNear: ids(near.filter((one) => !keeps(one))),
      keepsOut: ids(far),
      notJudged: ids(others.filter((one) => !near.includes(one) && !far.includes(one))),
      farthest: lets.length === 0 ? null : Math.max(...lets.map(({ id }) => off.get(id)!.distance)),
    };
  });
  return { slots: found, eachWithin, together: worstTogether(measured, may) };
}
