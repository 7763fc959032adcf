import { DISCRIMINATION, type DiscriminationMethod, type QuestionId } from "@partsproof/core/sensory";
import type { BodyOf, Flight } from "@partsproof/house/protocol";
import { alcoholAtMostG } from "./alcohol-at-most.ts";
import type { Cupboard, Pourable } from "./cupboard.ts";

/** A flight as it is being set up. */
export interface Plan {
  /** What the flight is to answer. */
  readonly question: QuestionId;
  /** How two are told apart. */
  readonly method: DiscriminationMethod;
  /** Sets that each taster gets. */
  readonly sets: number;
  /** Paired comparison: what is asked for, as in "sweeter", and the vessel that is said to have more of it. */
  readonly asked: string;
  readonly expectedVesselId: string | null;
  /** How close: a glass of the target labelled R besides the hidden one. */
  readonly reference: boolean;
  /** So many of the glasses, drawn by the house, are poured a second time. */
  readonly repeats: number;
  /** One more glass, of a whiskey that everybody knows. */
  readonly controlVesselId: string | null;
  /** Of more glasses than a palate takes each taster gets so many; null for all. */
  readonly glassesEach: number | null;
  /** The strong and smoky ones late, where that costs no balance. */
  readonly late: boolean;
  readonly name: string;
  readonly pouring: Flight["pouring"];
  /** How many glasses from each vessel, in the order chosen. */
  readonly pours: readonly { readonly vesselId: string; readonly glasses: number }[];
  readonly distractors: readonly string[];
  readonly targetNameId: string | null;
  readonly pourMl: number;
  readonly tasterIds: readonly string[];
  /** Seats besides, that guests take by a link or a code. */
  readonly seats: number;
  /** Evenings on which the same is to be tasted. */
  readonly sittings: number;
  readonly pourer: string;
}

const MOST_GLASSES = 10;
const MOST_SETS = 8;
/** Of each round: every glass is poured twice. */
const MOST_AGAIN = 8;
export const MOST_TASTERS = 12;
export const MOST_DISTRACTORS = 6;

/** Common practice, no source: 15 mL is enough to smell and taste twice. */
const USUAL_POUR_ML = 15;

export function newPlan(today: string): Plan {
  return {
    // Names, guesses and an order: what a flight gathers where nobody says otherwise.
    question: "which_is_which",
    method: "triangle",
    sets: 2,
    asked: "",
    expectedVesselId: null,
    reference: false,
    repeats: 0,
    controlVesselId: null,
    glassesEach: null,
    late: false,
    name: `Flight of ${today}`,
    pouring: "someone else",
    pours: [],
    distractors: [],
    targetNameId: null,
    pourMl: USUAL_POUR_ML,
    tasterIds: [],
    seats: 0,
    sittings: 1,
    pourer: "",
  };
}

/** Two are told apart, set by set. */
export const inSets = ({ question }: Pick<Plan, "question">): boolean =>
  question === "tell_apart" || question === "changed";

/** Everything but two rounds can be poured by whoever tastes it. */
export const mayBeAlone = ({ question }: Pick<Plan, "question">): boolean => question !== "agree_with_myself";

/** Marks for the undersides. */
const MOST_MARKED = 10;

/** Coded glasses in a set of a method; a duo-trio's R has no code. */
const codedInSet = (method: DiscriminationMethod): number =>
  (DISCRIMINATION[method].orders[0]?.length ?? 0) - (method === "duo_trio" ? 1 : 0);

/** Sets that each taster can get: alone only as many as there are marks for. */
export const mostSets = ({ pouring, method }: Pick<Plan, "pouring" | "method">): number =>
  pouring === "alone" ? Math.floor(MOST_MARKED / codedInSet(method)) : MOST_SETS;

/** The plan with no more sets than there can be. */
export const withinSets = (plan: Plan): Plan => ({ ...plan, sets: Math.min(plan.sets, mostSets(plan)) });

/** The most glasses, and the most of one whiskey, that are chosen for a question. */
export function mostGlasses({ question }: Pick<Plan, "question">): {
  readonly all: number;
  readonly each: number;
} {
  if (question === "tell_apart" || question === "changed") return { all: 2, each: 1 };
  return question === "agree_with_myself"
    ? { all: MOST_AGAIN, each: 1 }
    : { all: MOST_GLASSES, each: MOST_GLASSES };
}

/** Another question asked of the same glasses; those it has no room for are left out. */
export function withQuestion(plan: Plan, question: QuestionId): Plan {
  const { all, each } = mostGlasses({ question });
  const pours = plan.pours.map((pour) => ({ ...pour, glasses: Math.min(pour.glasses, each) }));
  return withinSets({
    ...plan,
    question,
    pours: all < MOST_GLASSES ? pours.slice(0, all) : pours,
    // Two rounds are not poured alone: the undersides tell of one pouring.
    pouring: mayBeAlone({ question }) ? plan.pouring : "someone else",
  });
}

/** Glasses chosen. */
export const glassesOf = ({ pours }: Pick<Plan, "pours">): number =>
  pours.reduce((sum, { glasses }) => sum + glasses, 0);

/** What of the layout of a row this question has use for, as it can be served; nothing in sets, in rounds and alone. */
function rowOf(plan: Plan): Pick<Plan, "repeats" | "controlVesselId" | "glassesEach" | "late"> {
  const none = { repeats: 0, controlVesselId: null, glassesEach: null, late: false };
  if (mostGlasses(plan).each === 1 || plan.pouring === "alone") return none;
  const glasses = glassesOf(plan);
  const late = plan.late && plan.question !== "which_is_which";
  const some = plan.question === "how_close" || plan.glassesEach === null || plan.glassesEach >= glasses;
  if (!some) return { ...none, glassesEach: plan.glassesEach, late };
  const control = plan.pours.some(({ vesselId }) => vesselId === plan.controlVesselId)
    ? null
    : plan.controlVesselId;
  return { repeats: Math.min(plan.repeats, glasses), controlVesselId: control, glassesEach: null, late };
}

/** Glasses that each taster drinks from, R included. */
export function glassesEach(plan: Plan): number {
  if (inSets(plan)) return plan.sets * (DISCRIMINATION[plan.method].orders[0]?.length ?? 0);
  if (plan.question === "agree_with_myself") return 2 * glassesOf(plan);
  const { repeats, controlVesselId, glassesEach: some } = rowOf(plan);
  const more = repeats + (controlVesselId === null ? 0 : 1);
  return (some ?? glassesOf(plan) + more) + (plan.question === "how_close" && plan.reference ? 1 : 0);
}

/** Glasses of one vessel that is poured so often that each taster gets at most. */
export function mostOfVessel(plan: Plan, glasses: number): number {
  if (inSets(plan)) return plan.sets * mostInSet(plan.method);
  return plan.question === "agree_with_myself" || rowOf(plan).repeats > 0 ? 2 * glasses : glasses;
}

/** Of one of the two in a set, in the order that has most of it. */
function mostInSet(method: DiscriminationMethod): number {
  return Math.max(...DISCRIMINATION[method].orders.map((order) => order.split("A").length - 1));
}

/** Tasters named and seats for guests. */
export const tastersOf = ({ pouring, tasterIds, seats }: Plan): number =>
  tasterIds.length + (pouring === "alone" ? 0 : seats);

/** Sets how many glasses come from a vessel; none takes it off. */
export function withGlasses(plan: Plan, vesselId: string, glasses: number): Plan {
  const known = plan.pours.some((pour) => pour.vesselId === vesselId);
  const pours = known
    ? plan.pours.map((pour) => (pour.vesselId === vesselId ? { vesselId, glasses } : pour))
    : [...plan.pours, { vesselId, glasses }];
  return { ...plan, pours: pours.filter((pour) => pour.glasses > 0) };
}

/** The names on offer, one entry each time a name is offered. */
export function namesOffered(plan: Plan, pourables: readonly Pourable[]): readonly string[] {
  const nameOf = new Map(pourables.map(({ vesselId, nameId }) => [vesselId, nameId]));
  return [
    ...plan.pours.flatMap(({ vesselId, glasses }) => {
      const nameId = nameOf.get(vesselId);
      return nameId === undefined ? [] : Array.from({ length: glasses }, () => nameId);
    }),
    ...(plan.question === "which_is_which" ? plan.distractors : []),
  ];
}

/** At most, in grams for each taster. */
export function plannedAlcoholG(plan: Plan, cupboard: Cupboard): number {
  const { pourables, names } = cupboard;
  const perMl = (vesselId: string): number =>
    pourables.find((one) => one.vesselId === vesselId)?.ethanolPerMl ?? 0;
  if (inSets(plan)) {
    const each = plan.pours.map(({ vesselId }) => perMl(vesselId)).toSorted((a, b) => b - a);
    const inSet = DISCRIMINATION[plan.method].orders[0]?.length ?? 0;
    const strong = mostInSet(plan.method);
    return plan.sets * plan.pourMl * ((each[0] ?? 0) * strong + (each[1] ?? 0) * (inSet - strong));
  }
  if (plan.question === "agree_with_myself") {
    return plan.pours.reduce(
      (sum, { vesselId, glasses }) => sum + 2 * glasses * plan.pourMl * perMl(vesselId),
      0,
    );
  }
  const { repeats, controlVesselId } = rowOf(plan);
  const reference = plan.question === "how_close" && plan.reference ? 1 : 0;
  const offered = namesOffered(plan, pourables).map((nameId) => names.get(nameId)?.ethanolPerMl ?? 0);
  if (controlVesselId !== null) offered.push(perMl(controlVesselId));
  // As the house does (F12): a repeat may be of any glass, R is taken for the strongest.
  const again = plan.pours.map(({ vesselId }) => perMl(vesselId));
  return (
    alcoholAtMostG(offered, glassesEach(plan) - repeats - reference, plan.pourMl) +
    alcoholAtMostG(again, repeats, plan.pourMl) +
    alcoholAtMostG(offered, reference, plan.pourMl)
  );
}

/** Where in the list of glasses that is sent the last one of a vessel stands. */
export function lastIndexOf(plan: Plan, vesselId: string): number {
  let last = -1;
  for (const pour of plan.pours) {
    last += pour.glasses;
    if (pour.vesselId === vesselId) return last;
  }
  return last;
}

export function draftOf(plan: Plan, offered: readonly string[]): BodyOf<"addFlight"> {
  const alone = plan.pouring === "alone";
  const paired = inSets(plan) && plan.method === "paired";
  const expected = plan.pours.find(({ vesselId }) => vesselId === plan.expectedVesselId)?.vesselId ?? null;
  return {
    name: plan.name,
    pouring: plan.pouring,
    question: plan.question,
    // What the question has no use for is not sent: the house refuses it.
    ...(inSets(plan) ? { method: plan.method, sets: plan.sets } : {}),
    ...(paired ? { asked: plan.asked, expectedVesselId: alone ? null : expected } : {}),
    ...(plan.question === "how_close" ? { reference: plan.reference } : {}),
    ...rowOf(plan),
    glasses: plan.pours.flatMap(({ vesselId, glasses }) =>
      Array.from({ length: glasses }, () => ({ vesselId })),
    ),
    distractors: plan.question === "which_is_which" ? [...plan.distractors] : [],
    // A target chosen before its name was taken off the offer is no target any more.
    targetNameId:
      mostGlasses(plan).each > 1 && offered.includes(plan.targetNameId ?? "") ? plan.targetNameId : null,
    pourMl: plan.pourMl,
    tasterIds: [...plan.tasterIds],
    seats: alone ? 0 : plan.seats,
    pourer: alone || plan.pourer.trim() === "" ? null : plan.pourer,
  };
}
