import {
  CONVENTIONAL_AIR,
  volumeAtFromVolumeAt20,
  volumeFromWeight,
  weigh,
} from "@partsproof/core/alcoholometry";
import { abv20, celsius, grams, millilitres20 } from "@partsproof/core/quantity";
import { band } from "./band.ts";
import { goalsGrown } from "./goals-grown.ts";
import { type Next, type Poured, type Pouring, type Standing, WATER } from "./pouring.ts";
import { waterGoal } from "./water-goal.ts";

/** Folds what happened into where things stand. */
export function standing(pouring: Pouring): Standing {
  let goals: readonly number[] = pouring.parts.map(({ plannedMl }) => plannedMl);
  let question: Standing["question"] = null;
  let stopped = false;
  let waterDone = false;
  const poured: Poured[] = [];
  const empty = new Set<number>();
  const now = () => ({ goals, poured, empty });
  for (const happening of pouring.happened) {
    if (happening.kind === "pour") {
      const { source, g } = happening;
      poured.push({ ...asWeighed(pouring, source, g), source });
      // Against what the part shall come to, not the bottle: a bottle may hold more than its book says.
      const overG = -missing(pouring, now(), source);
      question = overG > bandOf(pouring, now(), source, g) ? { kind: "over", source, g: overG } : null;
    } else if (happening.kind === "empty") {
      const { source } = happening;
      empty.add(source);
      const part = pouring.sources[source]?.part;
      const others = pouring.sources.some((one, i) => one.part === part && !empty.has(i));
      const g = missing(pouring, now(), source);
      const short = !others && g > bandOf(pouring, now(), source, g);
      question = short ? { kind: "short", source, g } : null;
    } else {
      const over = question?.source;
      question = null;
      if (happening.kind === "stop") stopped = true;
      else if (happening.kind === "grow") goals = goalsGrown(pouring, now()) ?? goals;
      else if (over === WATER) waterDone = true;
      else {
        const sums = pouredOf(pouring, poured);
        const part = over === undefined ? undefined : pouring.sources[over]?.part;
        goals = goals.map((goal, i) => (i === part ? (sums[i] ?? goal) : goal));
      }
    }
  }
  const next = stopped || question !== null ? null : nextOf(pouring, now(), waterDone);
  return {
    poured,
    pouredMl: pouredOf(pouring, poured),
    waterMl: waterOf(poured),
    goals,
    waterGoalMl: waterGoal(pouring, goals, poured),
    empty,
    question,
    next,
    finished: question === null && next === null,
  };
}

/** What a scale's grams of a source are. */
function asWeighed(pouring: Pouring, source: number, g: number): Omit<Poured, "source"> {
  const { massG, ml20 } = volumeFromWeight(grams(g), onScale(pouring, source));
  return { g, massG, ml20 };
}

function onScale(pouring: Pouring, source: number) {
  const strength = source === WATER ? 0 : (pouring.sources[source]?.abv20 ?? 0);
  return { abv20: abv20(strength), celsius: celsius(pouring.celsius), air: CONVENTIONAL_AIR };
}

function gramsOf(
  pouring: Pouring,
  source: number,
  ml20: number,
): { readonly g: number; readonly ml: number } {
  const of = onScale(pouring, source);
  const ml = volumeAtFromVolumeAt20(millilitres20(ml20), of.celsius, of.abv20);
  return { g: weigh(ml, of).grams, ml };
}

function pouredOf(pouring: Pouring, poured: readonly Poured[]): readonly number[] {
  return pouring.parts.map((_, part) =>
    poured.reduce((sum, one) => sum + (pouring.sources[one.source]?.part === part ? one.ml20 : 0), 0),
  );
}

const waterOf = (poured: readonly Poured[]): number =>
  poured.reduce((sum, one) => sum + (one.source === WATER ? one.ml20 : 0), 0);

type Now = Pick<Standing, "goals" | "poured" | "empty">;

function bandOf(pouring: Pouring, now: Now, source: number, leastG: number): number {
  const all = now.poured.reduce((sum, one) => sum + (one.source === source ? one.g : 0), 0);
  return band(Math.max(all, leastG), pouring.scale).by;
}

/** What the part of a source still wants, g on the scale; below 0 when it has too much. */
function missing(pouring: Pouring, now: Now, source: number): number {
  const part = pouring.sources[source]?.part ?? WATER;
  const ml20 =
    source === WATER
      ? waterGoal(pouring, now.goals, now.poured) - waterOf(now.poured)
      : (now.goals[part] ?? 0) - (pouredOf(pouring, now.poured)[part] ?? 0);
  return Math.sign(ml20) * gramsOf(pouring, source, Math.abs(ml20)).g;
}

/** The first thing still to pour: parts in order, then water. Less than the scale can tell is nothing. */
function nextOf(pouring: Pouring, now: Now, waterDone: boolean): Next | null {
  const sums = pouredOf(pouring, now.poured);
  for (const [part, goal] of now.goals.entries()) {
    const source = sourceOf(pouring, part, now);
    const next =
      source === null
        ? null
        : step(pouring, now, source.at, Math.min(source.roomMl, goal - (sums[part] ?? 0)));
    if (next !== null) return next;
  }
  if (waterDone || now.empty.has(WATER)) return null;
  return step(pouring, now, WATER, waterGoal(pouring, now.goals, now.poured) - waterOf(now.poured));
}

/** Which bottle a part is poured from now: the first with something in it; the last, when by the book all are empty. */
function sourceOf(
  pouring: Pouring,
  part: number,
  { poured, empty }: Now,
): { readonly at: number; readonly roomMl: number } | null {
  const open = pouring.sources.flatMap((source, at) => (source.part === part && !empty.has(at) ? [at] : []));
  for (const at of open) {
    const { haveMl } = pouring.sources[at] ?? { haveMl: null };
    const out = poured.reduce((sum, one) => sum + (one.source === at ? one.ml20 : 0), 0);
    const last = at === open.at(-1);
    const roomMl = haveMl === null || last ? Infinity : haveMl - out;
    if (gramsLeft(pouring, at, roomMl)) return { at, roomMl };
  }
  return null;
}

const gramsLeft = (pouring: Pouring, source: number, roomMl: number): boolean =>
  roomMl === Infinity || (roomMl > 0 && gramsOf(pouring, source, roomMl).g > band(0, pouring.scale).by);

function step(pouring: Pouring, now: Now, source: number, ml20: number): Next | null {
  if (!(ml20 > 0)) return null;
  const { g, ml } = gramsOf(pouring, source, ml20);
  const poured = now.poured.some((one) => one.source === source);
  // A first pour of very little is still a pour; of one that is in, what the scale cannot tell is done.
  if (g <= (poured ? bandOf(pouring, now, source, g) : 10 ** -6)) return null;
  const before = now.poured.reduce((sum, one) => sum + one.g, 0);
  return { source, g, ml20, ml, showsG: pouring.tare === "running" ? pouring.baseG + before + g : g };
}
