import { type Curves, levelOn } from "./curves.ts";
import { dayOfLevel } from "./day-of-level.ts";
import { drawCurves } from "./draw-curves.ts";
import { chanceBy, dayBy, likelyWindow, orderDays, orderOf, type Window } from "./likely-window.ts";
import { gatherPieces } from "./gather-pieces.ts";
import { type CheckTasting, checkSettings, checkTastings, type RestSettings } from "./question.ts";
import { type TellingDay, tellingDays } from "./telling-days.ts";
import { weighCurves } from "./weigh-curves.ts";

const FIRST_COUNT = 8192;
const MOST = 65_536;
/** So many equal courses must be left, or more are drawn. */
const ENOUGH = 500;
const LEVEL = 0.8;
/**
 * The next tasting comes no later than the day by which the level is there with this chance: the oak should not be found gone too far.
 * Before anything was tasted nothing is known but the prior, so it comes sooner; those planned after it may come later.
 */
const BEFORE_FIRST = 0.2;
const BEFORE_NEXT = 1 / 3;
const BEFORE_LAST = 0.5;
const PLANNED = 3;

/** The level on a day: the middle, and what holds 80 % of the belief. */
export interface LevelBelief {
  readonly day: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Courses drawn beforehand, with the day each reaches the two levels and the order of those days. */
interface Courses {
  readonly curves: Curves;
  readonly ready: Float64Array;
  readonly leads: Float64Array;
  readonly readyOrder: Uint32Array;
  readonly leadsOrder: Uint32Array;
}

/** What is believed of one attribute after the tastings. */
export interface RestBelief {
  /** When the pull level is reached. */
  readonly ready: Window;
  /** When the oak leads. */
  readonly leads: Window;
  /** From which day on it is as likely as not that the oak leads; null where it never is. */
  readonly leadsFrom: number | null;
  /** Chance that each is there today. */
  readonly readyToday: number;
  readonly leadsToday: number;
  /** What the level is believed to be on a day. */
  levelOn(day: number): LevelBelief;
  /** Up to three days that tell most, the next one first. None where the level is there already, as likely as not. */
  nextTastings(count?: number): TellingDay[];
  /** How many equal courses the belief rests on, and how many were drawn. */
  readonly effective: number;
  readonly drawn: number;
}

/**
 * What to believe of a rest on oak: when an attribute reaches a level, after tasting it on some days.
 *
 * Bayes by importance sampling: 8 192 courses are drawn from what is believed beforehand (`priors.data.ts`: nobody has published
 * constants for small pieces, so it is wide) and weighed by the tastings; more are drawn, up to 65 536, until they are worth 500
 * equal ones. Deterministic: asked twice, the same answer. Each attribute by itself.
 *
 * Domain: tastings of 0 to 10 on days 0 to 3650 since the oak went in; conditions see `checkSettings`. Accuracy: a probability is off
 * by about 0.5 / √effective (0.02 at 500) from drawing alone; how far the belief is from the world is measured on simulated households
 * (`households.test.ts`), not known. Source: forms from Delgado 2022 and Trillo 2024, the numbers taken or from memory; that pieces
 * with days of their own add up in the liquid, and none slows another, is taken. Cost: about 60 ms to open, 5 ms a question; more with
 * each such piece.
 *
 * @throws RangeError outside the domain
 * @example
 * const rest = openRest({ conditions: REFERENCE, course: "rises", form: "two-stage", pullAt: 6, leadsAt: 7.5 });
 * rest([{ day: 4, level: 3 }, { day: 9, level: 4.5 }], 9).ready; // a window of days
 */
export function openRest(
  asked: RestSettings,
): (tastings: readonly CheckTasting[], today: number) => RestBelief {
  const settings = gatherPieces(asked);
  checkSettings(settings);
  const drawn: Courses[] = [];
  const draw = (size: number): Courses => {
    const known = drawn.find(({ curves }) => curves.count === size);
    if (known !== undefined) return known;
    const curves = drawCurves(settings, size);
    const ready = dayOfLevel(curves, settings.pullAt);
    const leads = dayOfLevel(curves, settings.leadsAt);
    const made = { curves, ready, leads, readyOrder: orderOf(ready), leadsOrder: orderOf(leads) };
    drawn.push(made);
    return made;
  };
  return (tastings, today) => {
    checkTastings(tastings, today);
    let courses = draw(FIRST_COUNT);
    let { weight, effective } = weighCurves(courses.curves, tastings);
    while (effective < ENOUGH && courses.curves.count < MOST) {
      courses = draw(courses.curves.count * 2);
      ({ weight, effective } = weighCurves(courses.curves, tastings));
    }
    const { curves } = courses;
    const ready = orderDays(courses.ready, weight, courses.readyOrder);
    const leads = orderDays(courses.leads, weight, courses.leadsOrder);
    const half = dayBy(leads, 0.5);
    return {
      ready: likelyWindow(ready, LEVEL),
      leads: likelyWindow(leads, LEVEL),
      leadsFrom: Number.isFinite(half) ? half : null,
      readyToday: chanceBy(ready, today),
      leadsToday: chanceBy(leads, today),
      levelOn: (day) => levelBelief(curves, weight, day),
      nextTastings: (count = PLANNED) => {
        if (chanceBy(ready, today) >= BEFORE_LAST) return [];
        const first = tastings.length > 0 ? BEFORE_NEXT : BEFORE_FIRST;
        const until = Array.from({ length: count }, (_, n) =>
          Math.min(
            dayBy(ready, count === 1 ? first : first + ((BEFORE_LAST - first) * n) / (count - 1)),
            FAR,
          ),
        );
        return tellingDays(curves, weight, courses.ready, today, until);
      },
      effective,
      drawn: curves.count,
    };
  };
}

/** Nobody plans to taste later than this. */
const FAR = 180;

function levelBelief(curves: Curves, weight: Float64Array, day: number): LevelBelief {
  const ordered = orderDays(
    weight.map((_, i) => levelOn(curves, i, day)),
    weight,
  );
  const tail = (1 - LEVEL) / 2;
  return { day, low: dayBy(ordered, tail), middle: dayBy(ordered, 0.5), high: dayBy(ordered, 1 - tail) };
}
