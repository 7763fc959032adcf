import {
  adjustStrength,
  describeLiquid,
  liquidOfVolume,
  makeUp,
  mix,
  reduceInSteps,
  waterToFill,
  waterToStrength,
} from "@partsproof/core/alcoholometry";
import { type Abv20, abv20, type Celsius, grams, millilitres20 } from "@partsproof/core/quantity";
import type { BodyRead, ReduceResult } from "../../protocol/index.ts";
import { benchAt } from "./liquid-at.ts";
import { at20, partsPoured, readAt } from "./parts-poured.ts";
import type { Reduction } from "./reduction.ts";
import { uncertainReduction } from "./reduce-uncertainty.ts";
import { onlyOne, refuseAsked, refuseReach } from "./refuse-reach.ts";
import { abvOf } from "./stated.ts";

type Body = BodyRead<"reckonReduce">;

/** Anything: the answer is proportional to it. */
const TRIAL_ML = 1000;
const WATER = abv20(0);

export function reckonReduce(body: Body): ReduceResult {
  const from = startParts(body);
  const to = abvOf(body.to);
  const add = body.add?.map(abvOf) ?? [WATER];
  const t =
    body.celsius === undefined
      ? undefined
      : benchAt(body.celsius, [...from.map(({ strength }) => abvOf(strength)), ...add, to]);
  const reduction = add[1] === undefined ? withOne(body, to, add[0] ?? WATER, t) : withTwo(body, to, add, t);
  const { added, liquidMl, finalMl, naiveWaterMl } = reduction;
  needCountable(Math.max(finalMl, Math.abs(naiveWaterMl)), body.to.value);
  // Strengths next to nothing divide to nothing, or to no number at all.
  if (!(liquidMl > 0 && added.every(({ volumeMl }) => volumeMl >= 0))) needCountable(Infinity, body.to.value);
  const water = added
    .filter((pour) => pour.abv20 === 0)
    .map(({ volumeMl }) => ({ ...amountOf(WATER, volumeMl) }));
  return {
    liquidMl,
    waterMl: sum(water.map(({ ml }) => ml)),
    waterG: sum(water.map(({ g }) => g)),
    finalMl,
    naiveWaterMl,
    ...more(body, reduction, to, t),
    ...(body.uncertainty === undefined
      ? {}
      : { uncertainty: uncertainReduction(body.uncertainty, reduction, to, body, t) }),
  };
}

/** What was asked for beyond the plain question. */
function more(body: Body, reduction: Reduction, to: Abv20, t: Celsius | undefined): Partial<ReduceResult> {
  const { start, added, liquidMl, finalMl } = reduction;
  const plain =
    body.add === undefined &&
    body.parts === undefined &&
    body.finalG === undefined &&
    body.steps === undefined &&
    t === undefined;
  if (plain) return {};
  const held = mix(start);
  return {
    finalG: mix([...start, ...added]).massG,
    added: added.map((pour) => amountOf(pour.abv20, pour.volumeMl)),
    ...(body.parts === undefined ? {} : { parts: start.map((pour) => amountOf(pour.abv20, pour.volumeMl)) }),
    ...(body.steps === undefined ? {} : { steps: stepsOf(body, reduction, to) }),
    ...(t === undefined
      ? {}
      : {
          asRead: {
            celsius: t,
            liquidMl: readAt(millilitres20(liquidMl), held.abv20, t),
            waterMl: sum(added.filter((p) => p.abv20 === 0).map((p) => readAt(p.volumeMl, p.abv20, t))),
            finalMl: readAt(millilitres20(finalMl), to, t),
            addedMl: added.map((p) => readAt(p.volumeMl, p.abv20, t)),
          },
        }),
  };
}

function startParts({ from, parts }: Body): NonNullable<Body["parts"]> {
  if (from !== undefined && parts !== undefined) {
    refuseAsked("strengths_exclude", ["parts"], "no from beside it", parts.length);
  }
  if (parts !== undefined) return parts;
  if (from === undefined) refuseAsked("strength_missing", ["from"], "a strength, or parts");
  return [{ parts: 1, strength: from }];
}

/** One liquid added: the amount asked is that of the start, or of what comes out. */
function withOne(body: Body, to: Abv20, add: Abv20, t: Celsius | undefined): Reduction {
  const { volumeMl, fillMl, finalG } = body;
  const asked = onlyOne({ volumeMl, fillMl, finalG });
  const parts = startParts(body);
  if (add === WATER && body.from !== undefined && asked !== "finalG") {
    return withWater(abvOf(body.from), to, asked, volumeMl ?? fillMl ?? 0, t);
  }
  const sumMl = volumeMl ?? TRIAL_ML;
  const trial = partsPoured(parts, sumMl, t);
  const held = mix(trial);
  if (add === WATER) needBelow(held.abv20, to);
  const answer = adjustStrength({ start: held, to, add });
  if (!answer.ok) refuseReach(answer.issue, ["to", "value"], "% vol", `${answer.nearest.abv20} % vol`);
  needCountable(answer.after.volumeMl, body.to.value);
  const scale = {
    volumeMl: 1,
    fillMl: at20(fillMl ?? 0, to, t) / answer.after.volumeMl,
    finalG: (finalG ?? 0) / answer.after.massG,
  }[asked];
  const finalMl = answer.after.volumeMl * scale;
  const liquidMl = held.volumeMl * scale;
  const byHead = asked === "volumeMl" ? liquidMl * (held.abv20 / to - 1) : finalMl * (1 - to / held.abv20);
  return {
    start: trial.map((pour) => ({ ...pour, volumeMl: millilitres20(pour.volumeMl * scale) })),
    added: [{ volumeMl: millilitres20(answer.addMl * scale), abv20: add }],
    liquidMl,
    finalMl,
    naiveWaterMl: add === WATER && held.abv20 !== to ? byHead : 0,
  };
}

/** A thousand cubic metres: a target so near 0 % vol is a slip of the keys. */
const MOST_ML = 1e9;

function needCountable(finalMl: number, to: number): void {
  if (finalMl <= MOST_ML) return;
  refuseAsked("amount_too_large", ["to", "value"], `a strength that takes at most ${MOST_ML} mL in all`, to);
}

/** The plain question. */
function withWater(
  from: Abv20,
  to: Abv20,
  asked: "volumeMl" | "fillMl",
  ml: number,
  t: Celsius | undefined,
): Reduction {
  const volumeMl = at20(ml, asked === "volumeMl" ? from : to, t);
  const reached =
    asked === "volumeMl"
      ? { liquidMl: volumeMl, ...waterToStrength({ volumeMl, from, to }) }
      : waterToFill({ finalMl: volumeMl, from, to });
  if (!reached.ok) refuseWater(reached.issue, from);
  const { liquidMl, waterMl, finalMl, naiveWaterMl } = reached;
  return {
    start: [{ volumeMl: liquidMl, abv20: from }],
    added: [{ volumeMl: waterMl, abv20: WATER }],
    liquidMl,
    finalMl,
    naiveWaterMl,
  };
}

function needBelow(from: Abv20, to: Abv20): void {
  const reached = waterToStrength({ volumeMl: millilitres20(1), from, to });
  if (!reached.ok) refuseWater(reached.issue, from);
}

/** Water makes nothing stronger, and never quite nothing of it. */
function refuseWater(issue: Parameters<typeof refuseReach>[0], from: Abv20): never {
  const nearest = issue.code === "target_above_start" ? `${from} % vol, without water` : undefined;
  refuseReach(issue, ["to", "value"], "% vol", nearest);
}

/** Two liquids added: from what there is to a strength and a final amount, both exactly. */
function withTwo(body: Body, to: Abv20, add: readonly Abv20[], t: Celsius | undefined): Reduction {
  const { volumeMl, fillMl, finalG } = body;
  if (volumeMl === undefined) {
    refuseAsked("amount_missing", ["volumeMl"], "the volume there is, since two liquids are added");
  }
  if (body.steps !== undefined) {
    refuseAsked("steps_of_one", ["steps"], "one liquid that is added", body.steps);
  }
  onlyOne({ fillMl, finalG });
  const [first = WATER, second = WATER] = add;
  if (first === second)
    refuseAsked("add_same_strength", ["add", 1], "another strength than the first", second);
  const start = partsPoured(startParts(body), volumeMl, t);
  const held = mix(start);
  const final = fillMl === undefined ? { g: grams(finalG ?? 0) } : { ml: at20(fillMl, to, t) };
  const answer = makeUp({ held, add: [first, second], to, final });
  if (!answer.ok) {
    const { nearest } = answer;
    const what =
      nearest === null
        ? undefined
        : `${nearest.after.abv20?.toFixed(2)} % vol with ${nearest.addMl.map((ml, n) => `${ml.toFixed(1)} mL of ${add[n]} % vol`).join(" and ")}`;
    const over = answer.issue.code === "more_than_final_already";
    const path = over ? [fillMl === undefined ? "finalG" : "fillMl"] : ["to", "value"];
    refuseReach(answer.issue, path, over ? ("g" in final ? "g" : "mL") : "% vol", what);
  }
  const finalMl = answer.after.volumeMl;
  const [a, b] = [Number(first), Number(second)];
  const gap = finalMl - held.volumeMl;
  const byHead =
    (finalMl * to - held.volumeMl * held.abv20 - gap * (a === 0 ? b : a)) / (a === 0 ? a - b : b - a);
  return {
    start,
    added: answer.addMl.map((ml, n) => ({ volumeMl: ml, abv20: add[n] ?? WATER })),
    liquidMl: held.volumeMl,
    finalMl,
    naiveWaterMl: a === 0 || b === 0 ? byHead : 0,
  };
}

/** The same addition over several days. */
function stepsOf(body: Body, { start, added }: Reduction, to: Abv20): NonNullable<ReduceResult["steps"]> {
  const add = added[0]?.abv20 ?? WATER;
  const held = mix(start);
  const done = reduceInSteps({ start: held, to, add, steps: body.steps ?? 1, by: body.stepsBy ?? "volume" });
  if (!done.ok) refuseReach(done.issue, ["to", "value"], "% vol", `${done.nearest.abv20} % vol`);
  return done.steps.map(({ addMl, addG, after }) => ({
    addMl,
    addG,
    abv20: after.abv20 ?? 0,
    volumeMl: after.volumeMl,
  }));
}

function amountOf(abv: Abv20, ml: number): { abv20: number; ml: number; g: number } {
  const { massG } = describeLiquid(liquidOfVolume(millilitres20(ml), abv));
  return { abv20: abv, ml, g: massG };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, x) => total + x, 0);
