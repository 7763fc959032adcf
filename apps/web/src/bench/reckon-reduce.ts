import {
  adjustStrength,
  type DescribedLiquid,
  describeLiquid,
  fillVessel,
  type Liquid,
  liquidOfVolume,
  makeUp,
  mix,
  reduceInSteps,
  type ReductionStep,
  volumeAt20FromVolumeAt,
  volumeAtFromVolumeAt20,
} from "@partsproof/core/alcoholometry";
import {
  abv20,
  celsius as celsiusOf,
  grams,
  type Millilitres20,
  millilitres20,
  millilitresRead,
} from "@partsproof/core/quantity";
import { propagate } from "@partsproof/core/uncertainty";
import { printAbv, printG, printMl } from "../figures/index.ts";
import { answered, no, type No } from "./answered.ts";
import { labelled, measuredMl, warmth } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface ReduceAsk {
  /** Strength now, % vol. */
  readonly from: number;
  /** Strength wanted. Not used where one liquid simply fills the vessel. */
  readonly to: number;
  /** Strength of what is added: 0 for water; two where both go in, the other liquid first. */
  readonly add: readonly [number] | readonly [number, number];
  /** What is known: all of what there is, what it shall end as, or the vessel to fill. Volumes as read at `celsius`. */
  readonly goal:
    | { readonly kind: "have" }
    | { readonly kind: "volume"; readonly ml: number }
    | { readonly kind: "mass"; readonly g: number }
    | { readonly kind: "fill"; readonly ml: number };
  /** What there is, mL as read. Not used where the answer says how much of it to take. */
  readonly haveMl: number;
  readonly celsius: number;
  readonly tools: Tools;
}

/** So much of one liquid. */
export interface Measured {
  readonly abv20: number;
  /** As read at the bench's temperature. */
  readonly ml: number;
  readonly ml20: number;
  readonly g: number;
}

export interface Reduced {
  readonly ok: true;
  readonly start: Measured;
  readonly added: readonly Measured[];
  readonly after: DescribedLiquid;
  /** What it measures at the bench's temperature. */
  readonly afterReadMl: number;
  readonly contractionMl: number;
  /** As done in the head: mL of the first added liquid; null where the head has no rule. */
  readonly naiveMl: number | null;
  readonly strength: Told;
}

const EMPTY: Liquid = { ethanolG: grams(0), waterG: grams(0) };

/** Takes a liquid to a strength with water, another liquid, or both. */
export function reckonReduce(ask: ReduceAsk): Reduced | No {
  return answered(() => {
    const solved = solve(ask);
    if (!solved.ok) return solved;
    const { tools } = ask;
    const amounts = [solved.start, ...solved.added];
    const t = warmth(ask.celsius, tools);
    const used = amounts.flatMap((one, i) =>
      one.ml > 0
        ? [{ ml: measuredMl(`v${i}`, one.ml, tools), abv: labelled(`s${i}`, one.abv20, tools) }]
        : [],
    );
    const strength = propagate(
      (valueOf) =>
        mix(
          used.map(({ ml, abv }) => {
            const of = abv20(valueOf(abv.id));
            const warm = celsiusOf(valueOf("t"));
            return { volumeMl: volumeAt20FromVolumeAt(millilitresRead(valueOf(ml.id)), warm, of), abv20: of };
          }),
        ).abv20,
      [...used.flatMap(({ ml, abv }) => [ml, abv]), t],
    );
    const { after } = solved;
    return {
      ...solved,
      afterReadMl: readAt(after.volumeMl, after.abv20 ?? 0, ask.celsius),
      contractionMl: amounts.reduce((sum, one) => sum + one.ml20, 0) - after.volumeMl,
      naiveMl: naive(ask, solved.start),
      strength: told(strength, tools),
    };
  });
}

/** The same over several days; the last day lands on the strength. Not where both go in, nor where the vessel is filled. */
export function reckonSteps(
  ask: ReduceAsk & { readonly days: number; readonly by: "volume" | "strength" },
): { readonly ok: true; readonly steps: readonly ReductionStep[] } | No {
  return answered(() => {
    const solved = solve(ask);
    if (!solved.ok) return solved;
    const start = liquidOfVolume(millilitres20(solved.start.ml20), abv20(ask.from));
    const { days: steps, by } = ask;
    const done = reduceInSteps({ start, to: abv20(ask.to), add: abv20(ask.add[0]), steps, by });
    return done.ok ? done : no(done.issue.message);
  });
}

type Solved = Pick<Reduced, "ok" | "start" | "added" | "after">;

function solve(ask: ReduceAsk): Solved | No {
  const { from, to, goal, celsius } = ask;
  const [first, second] = ask.add;
  const have = at20(ask.haveMl, from, celsius);
  const held = liquidOfVolume(have, abv20(from));
  const measured = (strength: number, ml20: number): Measured => {
    const { ethanolG, waterG } = liquidOfVolume(millilitres20(ml20), abv20(strength));
    return { abv20: strength, ml20, g: ethanolG + waterG, ml: readAt(ml20, strength, celsius) };
  };
  if (second !== undefined) {
    if (goal.kind === "have")
      return no("both water and another liquid require an end: a volume, a mass or a vessel to fill");
    const final = goal.kind === "mass" ? { g: grams(goal.g) } : { ml: at20(goal.ml, to, celsius) };
    const done = makeUp({ held, add: [abv20(first), abv20(second)], to: abv20(to), final });
    if (!done.ok) {
      const amounts =
        done.nearest === null
          ? "a larger end, or less to begin with"
          : `${printAbv(done.nearest.after.abv20 ?? 0)}, with ${printMl(done.nearest.addMl[0])} of the other and ${printMl(done.nearest.addMl[1])} of water`;
      return no(done.issue.message, amounts);
    }
    return {
      ok: true,
      start: measured(from, have),
      added: [measured(first, done.addMl[0]), measured(second, done.addMl[1])],
      after: done.after,
    };
  }
  if (goal.kind === "fill") {
    // The vessel is filled at the bench's temperature: its contents at 20 °C depend on the strength that results.
    let capacity = millilitres20(goal.ml);
    let done = fillVessel({ ...held, capacityMl: capacity, abv20: abv20(first) });
    for (let turn = 0; turn < 8 && done.ok; turn++) {
      capacity = at20(goal.ml, done.after.abv20 ?? 0, celsius);
      done = fillVessel({ ...held, capacityMl: capacity, abv20: abv20(first) });
    }
    if (!done.ok) return no(done.issue.message, `pour ${printMl(have - capacity)} out first`);
    return { ok: true, start: measured(from, have), added: [measured(first, done.addMl)], after: done.after };
  }
  if (goal.kind === "have") {
    const done = adjustStrength({ start: held, to: abv20(to), add: abv20(first) });
    if (!done.ok) return notBetween(done.issue.message, done.nearest.abv20, first);
    return { ok: true, start: measured(from, have), added: [measured(first, done.addMl)], after: done.after };
  }
  if (from === first) return no(`two liquids of one strength cannot change it: both are ${from} % vol`);
  const final = goal.kind === "mass" ? { g: grams(goal.g) } : { ml: at20(goal.ml, to, celsius) };
  const done = makeUp({ held: EMPTY, add: [abv20(from), abv20(first)], to: abv20(to), final });
  if (!done.ok) return notBetween(done.issue.message, done.nearest?.after.abv20 ?? from, first);
  return {
    ok: true,
    start: measured(from, done.addMl[0]),
    added: [measured(first, done.addMl[1])],
    after: describeLiquid(done.after),
  };
}

function notBetween(message: string, nearest: number, added: number): No {
  const how = Math.abs(nearest - added) < 1e-6 ? "the other liquid alone" : "with nothing added";
  return no(
    message,
    `${printAbv(nearest)}, ${added === 0 && how !== "with nothing added" ? "water alone" : how}`,
  );
}

function naive({ goal, from, to, add, celsius }: ReduceAsk, start: Measured): number | null {
  if (add.length === 2 || add[0] !== 0 || to === 0) return null;
  if (goal.kind === "have") return start.ml20 * (from / to - 1);
  return goal.kind === "volume" ? at20(goal.ml, to, celsius) * (1 - to / from) : null;
}

const at20 = (ml: number, strength: number, t: number): Millilitres20 =>
  volumeAt20FromVolumeAt(millilitresRead(ml), celsiusOf(t), abv20(strength));

const readAt = (ml20: number, strength: number, t: number): number =>
  volumeAtFromVolumeAt20(millilitres20(ml20), celsiusOf(t), abv20(strength));

/** "285 mL (284.7 g)". */
export function printMeasured({ ml, g }: Pick<Measured, "ml" | "g">): string {
  return `${printMl(ml)}, ${printG(g)}`;
}
