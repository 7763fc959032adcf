import { describeLiquid } from "../alcoholometry/index.ts";
import { grams } from "../quantity/index.ts";
import type { Addition, KeptUp, KeptUpStep, NotKeptUp } from "./step.ts";

/** A pour or a filling this near its bound, as a part of it, meets it: the ledger's own tolerance. */
const MEETS = 1e-6;
/** Below this the first of it is gone for good, and the part that is kept is counted anew. */
const GONE = 1e-100;

/**
 * Folds additions and pours of one bottle.
 *
 * Domain: masses of 0 or more, not both 0; pours above 0; days not falling. Accuracy: conservation to 1e-12 of what came in over 2,000
 * steps; volumes are those of `density`, contraction counted. The bottle is taken to be well mixed. Source: conservation of mass.
 * Cost: about 1 µs a step, whatever is in it.
 *
 * @throws RangeError outside the domain; a "no" where more is poured than there is, or filled than goes in
 * @example
 * keepUp([{ kind: "add", at: 0, liquidId: "malt", ethanolG: 200, waterG: 300 }, { kind: "pour", at: 9, ml: 60 }], 750)
 */
export function keepUp(steps: readonly KeptUpStep[], capacityMl: number): KeptUp | NotKeptUp {
  if (!(capacityMl > 0 && capacityMl < Infinity))
    throw new RangeError(`a capacity requires more than 0 mL, got ${capacityMl} mL`);
  const made = (): Float64Array => new Float64Array(steps.length);
  const [volumeMl, ethanolG, waterG, kept] = [made(), made(), made(), made()];
  const age = new Int32Array(steps.length);
  let [ethanol, water, volume, part, ages, day] = [0, 0, 0, 1, 0, -Infinity];
  for (const [n, step] of steps.entries()) {
    checkStep(step, n, day);
    day = step.at;
    if (step.kind === "add") {
      ethanol += step.ethanolG;
      water += step.waterG;
      volume = volumeOf(ethanol, water);
      if (volume > capacityMl * (1 + MEETS))
        return { ok: false, code: "above_capacity", step: n, limitMl: capacityMl, receivedMl: volume };
    } else {
      if (step.ml > volume * (1 + MEETS))
        return { ok: false, code: "more_than_there_is", step: n, limitMl: volume, receivedMl: step.ml };
      const all = step.ml >= volume * (1 - MEETS);
      const stays = all ? 0 : 1 - step.ml / volume;
      ethanol *= stays;
      water *= stays;
      volume *= stays;
      part *= stays;
      if (part < GONE) [part, ages] = [1, ages + 1];
    }
    volumeMl[n] = volume;
    ethanolG[n] = ethanol;
    waterG[n] = water;
    kept[n] = part;
    age[n] = ages;
  }
  const folded = { ok: true, volumeMl, ethanolG, waterG, kept, age } as const;
  return { ...folded, additions: additionsOf(steps, folded) };
}

const volumeOf = (ethanol: number, water: number): number =>
  describeLiquid({ ethanolG: grams(ethanol), waterG: grams(water) }).volumeMl;

function additionsOf(steps: readonly KeptUpStep[], { kept, age }: Pick<KeptUp, "kept" | "age">): Addition[] {
  const last = steps.length - 1;
  return steps.flatMap((step, n): Addition[] => {
    if (step.kind !== "add") return [];
    const half = firstHalved(kept, age, n);
    return [
      {
        step: n,
        at: step.at,
        liquidId: step.liquidId,
        ethanolG: step.ethanolG,
        waterG: step.waterG,
        left: leftAt(kept, age, n, last),
        halfLife: half === null ? null : (steps[half]?.at ?? step.at) - step.at,
      },
    ];
  });
}

/** Part of what came in at one step that is left after another. */
export function leftAt(kept: Float64Array, age: Int32Array, from: number, to: number): number {
  return age[from] === age[to] ? (kept[to] as number) / (kept[from] as number) : 0;
}

/** The first step after which half or less is left: what is kept only falls, so it is found by halving. */
function firstHalved(kept: Float64Array, age: Int32Array, from: number): number | null {
  let [low, high] = [from, kept.length - 1];
  if (leftAt(kept, age, from, high) > 0.5) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (leftAt(kept, age, from, middle) > 0.5) low = middle;
    else high = middle;
  }
  return high;
}

function checkStep(step: KeptUpStep, n: number, day: number): void {
  if (!(step.at >= day && step.at < Infinity))
    throw new RangeError(`step ${n} requires a day not before the last, got ${step.at}`);
  if (step.kind === "pour") {
    if (!(step.ml > 0 && step.ml < Infinity))
      throw new RangeError(`step ${n} requires a pour of more than 0 mL, got ${step.ml} mL`);
    return;
  }
  const { ethanolG, waterG } = step;
  if (!(ethanolG >= 0 && waterG >= 0 && ethanolG + waterG > 0 && ethanolG + waterG < Infinity))
    throw new RangeError(
      `step ${n} requires masses of 0 or more, not both 0, got ${ethanolG} g and ${waterG} g`,
    );
}
