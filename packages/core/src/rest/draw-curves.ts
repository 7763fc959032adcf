import { evenDraw, fillNormal, repeatableRng } from "../statistics/index.ts";
import { conditionsEffect } from "./conditions-effect.ts";
import type { Curves } from "./curves.ts";
import { EFFECTS, PRIORS } from "./priors.data.ts";
import type { RestSettings } from "./question.ts";
import { timeOfShare } from "./time-of-share.ts";

/** Where every drawing starts: asked twice, the same answer. */
const START = 8;
const SIX = 6;

interface Law {
  readonly low: number;
  readonly high: number;
}

/** Courses drawn from what is believed before any tasting, carried to the conditions asked for. The same for the same settings. */
export function drawCurves({ conditions, course, form }: RestSettings, count: number): Curves {
  const rng = repeatableRng(START);
  const two = new Float64Array(2);
  const even = ({ low, high }: Law): number => low + (high - low) * evenDraw(rng);
  const evenLog = ({ low, high }: Law): number => low * (high / low) ** evenDraw(rng);
  const normal = (): number => {
    fillNormal(two, rng);
    return two[0] as number;
  };
  const bell = (law: Law & { readonly mean: number; readonly sd: number }): number => {
    for (;;) {
      const drawn = law.mean + law.sd * normal();
      if (drawn > law.low && drawn < law.high) return drawn;
    }
  };
  const dayOfSix = (): number => {
    const { low, high, outside, outsideLogSd } = PRIORS.dayOfSix;
    const inside = evenLog(PRIORS.dayOfSix);
    const beyond = Math.exp(Math.abs(outsideLogSd * normal()));
    const draw = evenDraw(rng);
    return draw >= outside ? inside : draw < outside / 2 ? low / beyond : high * beyond;
  };
  const made = (): Float64Array => new Float64Array(count);
  const [before, rise, quick, fast, slow, fall, noise] = [
    made(),
    made(),
    made(),
    made(),
    made(),
    made(),
    made(),
  ];
  for (let i = 0; i < count; i += 1) {
    const [start, up] = [bell(PRIORS.before), bell(PRIORS.rise)];
    const [share, faster] = [even(PRIORS.quick), evenLog(PRIORS.faster)];
    const [six, half] = [dayOfSix(), evenLog(PRIORS.halfDay)];
    const getsThere = course === "rises" && start + up > SIX;
    const [day, part] = getsThere ? [six, (SIX - start) / up] : [half, 0.5];
    const effect = conditionsEffect(conditions, {
      dosePower: even(EFFECTS.dosePower),
      thicknessPower: bell(EFFECTS.thicknessPower),
      activation: even(EFFECTS.activation),
      eachUse: even(EFFECTS.eachUse),
    });
    const rate = (timeOfShare(form, share, faster, part) / day) * effect.speed;
    before[i] = start;
    rise[i] = up * effect.rise;
    quick[i] = share;
    slow[i] = rate;
    fast[i] = rate * faster;
    const fallHalf = evenLog(PRIORS.fallHalfDays);
    fall[i] = course === "rises" ? 0 : Math.LN2 / fallHalf;
    noise[i] = even(PRIORS.noise);
  }
  return { form, count, before, rise, quick, fast, slow, fall, noise };
}
