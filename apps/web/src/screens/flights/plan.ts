import type { QuestionId } from "@partsproof/core/sensory";
import type { BodyOf, Flight } from "@partsproof/house/protocol";
import { alcoholAtMostG } from "./alcohol-at-most.ts";
import type { Cupboard, Pourable } from "./cupboard.ts";

/** A flight as it is being set up. */
export interface Plan {
  /** What the flight is to answer; the house itself keeps no question. */
  readonly question: QuestionId;
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

export const MOST_GLASSES = 10;
export const MOST_TASTERS = 12;
export const MOST_DISTRACTORS = 6;

/** Common practice, no source: 15 mL is enough to smell and taste twice. */
const USUAL_POUR_ML = 15;

export function newPlan(today: string): Plan {
  return {
    question: "like_best",
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

export const glassesOf = ({ pours }: Pick<Plan, "pours">): number =>
  pours.reduce((sum, { glasses }) => sum + glasses, 0);

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
    ...plan.distractors,
  ];
}

/** At most, in grams for each taster. */
export function plannedAlcoholG(plan: Plan, { pourables, names }: Cupboard): number {
  const offered = namesOffered(plan, pourables).map((nameId) => names.get(nameId)?.ethanolPerMl ?? 0);
  return alcoholAtMostG(offered, glassesOf(plan), plan.pourMl);
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
  return {
    name: plan.name,
    pouring: plan.pouring,
    glasses: plan.pours.flatMap(({ vesselId, glasses }) =>
      Array.from({ length: glasses }, () => ({ vesselId })),
    ),
    distractors: [...plan.distractors],
    // A target chosen before its name was taken off the offer is no target any more.
    targetNameId: offered.includes(plan.targetNameId ?? "") ? plan.targetNameId : null,
    pourMl: plan.pourMl,
    tasterIds: [...plan.tasterIds],
    seats: alone ? 0 : plan.seats,
    pourer: alone || plan.pourer.trim() === "" ? null : plan.pourer,
  };
}
