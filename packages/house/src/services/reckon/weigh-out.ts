import {
  adjustStrength,
  CONVENTIONAL_AIR,
  mix,
  type Pour,
  type PourOnScale,
  pouredBetweenReadings,
  type PoursResolved,
  resolvePours,
  volumeFromWeight,
  weighPours,
} from "@partsproof/core/alcoholometry";
import { type Abv20, abv20, type Celsius, grams, millilitres20 } from "@partsproof/core/quantity";
import { measuredUncertainty } from "@partsproof/core/uncertainty";
import type { BodyRead, Instruments, WeighOutResult } from "../../protocol/index.ts";
import { benchAt } from "./liquid-at.ts";
import { benchInput, measuredPour, measureOf, takenAs } from "./measured.ts";
import { partsPoured } from "./parts-poured.ts";
import { onlyOne, refuseAsked, refuseReach } from "./refuse-reach.ts";
import { abvOf } from "./stated.ts";
import { told } from "./told.ts";

type Body = BodyRead<"reckonWeighOut">;
type Air = typeof CONVENTIONAL_AIR;
interface Bench {
  readonly celsius: Celsius;
  readonly air?: Air;
}

const WATER = abv20(0);
/** Less than any scale shows. */
const NOTHING_G = 1e-6;
/** Anything: the answer is proportional to it. */
const TRIAL_ML = 1000;

export function reckonWeighOut(body: Body): WeighOutResult {
  const add = body.add === undefined ? WATER : abvOf(body.add);
  const strengths = body.parts.map(({ strength }) => abvOf(strength));
  const t = benchAt(body.celsius, body.to === undefined ? strengths : [...strengths, add]);
  const bench: Bench = body.inAir ? { celsius: t, air: CONVENTIONAL_AIR } : { celsius: t };
  const to = body.to === undefined ? undefined : abvOf(body.to);
  const plan = planOf(body, to, add, bench);
  const pouredG = pouredOf(body);
  if (body.parts.some(({ done }) => done) && pouredG.every((g) => g < NOTHING_G)) {
    refuseAsked("nothing_to_pour", ["parts"], "something poured before a part is done");
  }
  const parts = body.parts.map(({ parts: count, done }, n) => {
    const strength = strengths[n] ?? WATER;
    const poured = volumeFromWeight(grams(pouredG[n] ?? 0), { ...bench, abv20: strength });
    return { parts: count, abv20: strength, pouredMl: poured.ml20, fixed: done };
  });
  const rest = resolvePours({
    parts,
    plannedMl: millilitres20(plan.pours.reduce((sum, pour) => sum + pour.volumeMl, 0)),
    ...(body.vesselMl === undefined ? {} : { capacityMl: millilitres20(body.vesselMl) }),
    ...(to === undefined ? {} : { to, add }),
  });
  if (!rest.ok) {
    const { nearest } = rest;
    const what =
      nearest === null
        ? undefined
        : `${nearest.mixture.abv20.toFixed(2)} % vol with ${nearest.reducingMl.toFixed(1)} mL of ${add} % vol and no more of the parts`;
    refuseReach(rest.issue, ["vesselMl"], "mL", what);
  }
  return {
    ...onScale(body, strengths, add, plan, pouredG, rest, bench, to !== undefined),
    ratioKept: rest.ratioKept,
    strengthKept: rest.strengthKept,
    worstShareOff: rest.worstShareOff,
    abv20: rest.mixture.abv20,
    proof60F: rest.mixture.proof60F,
    finalMl: rest.mixture.volumeMl,
    finalG: rest.mixture.massG,
    celsius: t,
    inAir: body.inAir,
    ...(body.uncertainty === undefined
      ? {}
      : { uncertainty: uncertainPours(body.uncertainty, parts, rest, add, bench) }),
  };
}

interface Plan {
  readonly pours: readonly Pour[];
  readonly reducingMl: number;
}

/** What the parts come to before anything is poured. */
function planOf(body: Body, to: Abv20 | undefined, add: Abv20, bench: Bench): Plan {
  const { volumeMl, fillMl, finalG } = body;
  const asked = onlyOne({ volumeMl, fillMl, finalG });
  const trial = partsPoured(body.parts, volumeMl ?? TRIAL_ML);
  const unreduced = mix(trial);
  const adjusted = to === undefined ? null : adjustStrength({ start: unreduced, to, add });
  if (adjusted?.ok === false) {
    refuseReach(adjusted.issue, ["to", "value"], "% vol", `${adjusted.nearest.abv20} % vol`);
  }
  const after = adjusted?.after ?? unreduced;
  const massG =
    finalG === undefined
      ? 0
      : volumeFromWeight(grams(finalG), { ...bench, abv20: after.abv20 ?? WATER }).massG;
  const scale = { volumeMl: 1, fillMl: (fillMl ?? 0) / after.volumeMl, finalG: massG / after.massG }[asked];
  return {
    pours: trial.map((pour) => ({ ...pour, volumeMl: millilitres20(pour.volumeMl * scale) })),
    reducingMl: (adjusted?.addMl ?? 0) * scale,
  };
}

/** The grams really poured of each part: as given, or from a scale that was not zeroed. */
function pouredOf({ parts, readingsG }: Body): readonly number[] {
  const given = parts.findIndex(({ pouredG }) => pouredG !== undefined);
  if (readingsG === undefined) return parts.map(({ pouredG }) => pouredG ?? 0);
  if (given >= 0) {
    refuseAsked("amounts_exclude", ["readingsG"], "no pouredG beside it", readingsG.length);
  }
  if (readingsG.length > parts.length + 1) {
    const limit = `at most ${parts.length + 1}: the vessel alone, then one after each part`;
    refuseAsked("readings_too_many", ["readingsG"], limit, readingsG.length);
  }
  const between = pouredBetweenReadings(readingsG);
  if (!between.ok) refuseReach(between.issue, ["readingsG", between.index], "g");
  return parts.map((_, n) => between.grams[n] ?? 0);
}

function onScale(
  body: Body,
  strengths: readonly Abv20[],
  add: Abv20,
  plan: Plan,
  pouredG: readonly number[],
  rest: PoursResolved,
  bench: Bench,
  reduced: boolean,
): Pick<WeighOutResult, "pours" | "reducing"> {
  const each = reduced ? [...strengths, add] : strengths;
  const pours = (ml: readonly number[]): readonly PourOnScale[] =>
    weighPours(
      each.map((strength, n) => ({ volumeMl: millilitres20(ml[n] ?? 0), abv20: strength })),
      bench,
    );
  const planned = pours([...plan.pours.map(({ volumeMl }) => volumeMl), plan.reducingMl]);
  const left = pours([...rest.addMl, rest.reducingMl]);
  const there = (body.readingsG?.[0] ?? 0) + pouredG.reduce((sum, g) => sum + g, 0);
  const lines = each.map((strength, n) => ({
    abv20: strength,
    plannedG: planned[n]?.grams ?? 0,
    pouredG: pouredG[n] ?? 0,
    toPourG: left[n]?.grams ?? 0,
    toPourMl: left[n]?.ml ?? 0,
    scaleG: there + (left[n]?.runningG ?? 0),
  }));
  return { pours: lines.slice(0, strengths.length), reducing: lines[strengths.length] ?? null };
}

/** The strength that comes out when everything, poured and to be poured, is weighed on that scale. */
function uncertainPours(
  instruments: Instruments,
  parts: readonly { readonly abv20: Abv20; readonly pouredMl: number }[],
  rest: PoursResolved,
  add: Abv20,
  { celsius: t, air }: Bench,
): NonNullable<WeighOutResult["uncertainty"]> {
  measureOf(instruments, ["scale"]);
  const weighed = { ...instruments, scale: instruments.scale ?? "kitchen" } as const;
  const whole: readonly Pour[] = [
    ...parts.map(({ abv20: strength, pouredMl }, n) => ({
      volumeMl: millilitres20(pouredMl + (rest.addMl[n] ?? 0)),
      abv20: strength,
    })),
    { volumeMl: rest.reducingMl, abv20: add },
  ];
  const bench = benchInput(
    t,
    whole.map(({ abv20: strength }) => strength),
    weighed,
    air !== undefined,
  );
  const measured = whole.flatMap((pour, n) => {
    const words = n < parts.length ? `part ${n + 1}` : add === 0 ? "the water" : "what reduces it";
    return pour.volumeMl === 0 ? [] : [measuredPour(pour, words, t, weighed, air !== undefined)];
  });
  return {
    takenAs: takenAs(weighed, ["label", "scale", "thermometer"], t),
    abv20: told(measuredUncertainty(measured, "abv20", bench)),
  };
}
