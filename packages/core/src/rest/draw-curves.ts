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

/** Where pieces have days of their own, each has its own effect. */
const UNCHANGED = { rise: 1, speed: 1 };

/** Courses drawn from what is believed before any tasting, carried to the conditions asked for. The same for the same settings. */
export function drawCurves({ conditions, pieces, course, form }: RestSettings, count: number): Curves {
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
  const dosePower = made();
  const each = (pieces ?? []).map((piece) => ({
    ...piece,
    outDay: piece.outDay ?? Infinity,
    rise: made(),
    speed: made(),
  }));
  for (let i = 0; i < count; i += 1) {
    const [start, up] = [bell(PRIORS.before), bell(PRIORS.rise)];
    const [share, faster] = [even(PRIORS.quick), evenLog(PRIORS.faster)];
    const [six, half] = [dayOfSix(), evenLog(PRIORS.halfDay)];
    const getsThere = course === "rises" && start + up > SIX;
    const [day, part] = getsThere ? [six, (SIX - start) / up] : [half, 0.5];
    const effects = {
      dosePower: even(EFFECTS.dosePower),
      thicknessPower: bell(EFFECTS.thicknessPower),
      activation: even(EFFECTS.activation),
      eachUse: even(EFFECTS.eachUse),
    };
    const effect = pieces === undefined ? conditionsEffect(conditions, effects) : UNCHANGED;
    dosePower[i] = effects.dosePower;
    for (const { caskRatio, thicknessCm, use, rise: rises, speed } of each) {
      const own = conditionsEffect({ ...conditions, caskRatio, thicknessCm, use }, effects);
      rises[i] = own.rise;
      speed[i] = own.speed;
    }
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
  const curves = { form, count, before, rise, quick, fast, slow, fall, noise };
  return pieces === undefined ? curves : { ...curves, pieces: { dosePower, each } };
}
