import { describeLiquid, liquidOfVolume } from "@partsproof/core/alcoholometry";
import { abv20, grams, millilitres20 } from "@partsproof/core/quantity";
import { goalsGrown } from "./goals-grown.ts";
import { liquidOf } from "./liquid-of.ts";
import { type Pouring, type Standing, WATER } from "./pouring.ts";
import { sharesOff } from "./shares-poured.ts";
import { standing } from "./standing.ts";

/** What a choice would come to. */
export interface Outcome {
  /** mL at 20 °C. */
  readonly volumeMl: number;
  readonly abv20: number;
  /** The part whose share of the parts is furthest from the recipe's, and by how much, in points of 100; 0 when all are right. */
  readonly offBy: number;
  readonly offPart: string;
  /** mL more than the vessel holds; 0 when it fits. */
  readonly overMl: number;
  /** Bottles that by the book hold less than this takes. */
  readonly shortOf: readonly { readonly label: string; readonly ml: number }[];
}

export interface Choice {
  readonly how: "grow" | "drift" | "stop";
  readonly outcome: Outcome;
}

/** What can be decided on an open question, with what each comes to; empty where none is open. */
export function choicesAt(pouring: Pouring, now: Standing): readonly Choice[] {
  if (now.question === null) return [];
  const grown = goalsGrown(pouring, now);
  const after = (how: Choice["how"]): Choice => {
    const then = standing({ ...pouring, happened: [...pouring.happened, { kind: how }] });
    const stopped = how === "stop";
    const goals = stopped ? then.pouredMl : then.goals.map((goal, i) => reach(pouring, then, goal, i));
    const water = stopped
      ? then.waterMl
      : Math.max(then.waterMl, how === "drift" && now.question?.source === WATER ? 0 : then.waterGoalMl);
    return { how, outcome: outcomeOf(pouring, then, goals, water) };
  };
  const drift = after("drift");
  const others = [...(grown === null ? [] : [after("grow")]), after("stop")];
  // A way that comes to the same as leaving it so is no way of its own.
  const [grow, stop] = (["grow", "stop"] as const).map((how) =>
    others.filter((one) => one.how === how && !same(one.outcome, drift.outcome)),
  );
  return [...(grow ?? []), drift, ...(stop ?? [])];
}

/** To what a kitchen measures. */
const same = (a: Outcome, b: Outcome): boolean =>
  Math.abs(a.volumeMl - b.volumeMl) < 0.05 && Math.abs(a.abv20 - b.abv20) < 0.005;

/** A part whose bottles are all done with stays at what is poured. */
function reach(pouring: Pouring, then: Standing, goal: number, part: number): number {
  const open = pouring.sources.some((source, i) => source.part === part && !then.empty.has(i));
  return open ? Math.max(goal, then.pouredMl[part] ?? 0) : (then.pouredMl[part] ?? 0);
}

function outcomeOf(pouring: Pouring, then: Standing, goals: readonly number[], waterMl: number): Outcome {
  const dry = liquidOf(pouring, goals, then.poured);
  const water = liquidOfVolume(millilitres20(waterMl), abv20(0));
  const { volumeMl, abv20: strength } = describeLiquid({
    ethanolG: grams(dry.ethanolG),
    waterG: grams(dry.waterG + water.waterG),
  });
  const { by, part } = sharesOff(pouring, goals);
  const room = pouring.capacityMl ?? Infinity;
  return {
    volumeMl,
    abv20: strength ?? 0,
    offBy: by,
    offPart: part,
    overMl: volumeMl > room * (1 + 1e-6) ? volumeMl - room : 0,
    shortOf: shortOf(pouring, goals, then),
  };
}

function shortOf(pouring: Pouring, goals: readonly number[], then: Standing): Outcome["shortOf"] {
  return pouring.parts.flatMap(({ label }, part) => {
    const of = pouring.sources.filter((source, i) => source.part === part && !then.empty.has(i));
    if (of.length === 0 || of.some(({ haveMl }) => haveMl === null)) return [];
    const gone = pouring.sources.flatMap((source, i) =>
      source.part === part && then.empty.has(i) ? [i] : [],
    );
    const out = then.poured.reduce((sum, one) => sum + (gone.includes(one.source) ? one.ml20 : 0), 0);
    const have = of.reduce((sum, { haveMl }) => sum + (haveMl ?? 0), 0) + out;
    const ml = (goals[part] ?? 0) - have;
    return ml > 0.05 ? [{ label, ml }] : [];
  });
}
