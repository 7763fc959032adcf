import { glassesPoured } from "@partsproof/core/sensory";
import type { FlightDraft, Issue } from "../../protocol/index.ts";
import type { z } from "zod";
import { inSets } from "./question.ts";

export type Draft = z.infer<typeof FlightDraft>;

/** A vessel that a flight pours from, and how many glasses of it there are over all tasters at most. */
export interface Pour {
  readonly vesselId: string;
  readonly glasses: number;
  /** Times its name is offered for it. */
  readonly offered: number;
  readonly path: Issue["path"];
}

export const tastersOf = ({ tasterIds, seats }: Pick<Draft, "tasterIds" | "seats">): number =>
  tasterIds.length + seats;

/** Q10: glasses that one name on offer stands for, over all tasters, at most; from the layout alone. */
export function glassesOfName(draft: Draft): number {
  const tasters = tastersOf(draft);
  const { question, method, sets, glassesEach, glasses } = draft;
  if (inSets(question) && method !== null) {
    const ask = { question: "tell_apart", method, sides: 1, share: 100 } as const;
    return Math.max(...glassesPoured(ask, tasters * sets));
  }
  if (question === "agree_with_myself") return 2 * tasters;
  return glassesEach === null ? tasters : Math.ceil((tasters * glassesEach) / glasses.length);
}

/** All that a draft pours. A drawn repeat may be of any glass, so each is poured twice at most (Q6). */
export function poursOf(draft: Draft, targetVesselId: string | null): readonly Pour[] {
  const each = glassesOfName(draft);
  const offered = draft.repeats > 0 ? 2 : 1;
  return [
    ...draft.glasses.map(({ vesselId }, i) => ({
      vesselId,
      glasses: each * offered,
      offered,
      path: ["glasses", i, "vesselId"],
    })),
    ...(draft.controlVesselId === null
      ? []
      : [{ vesselId: draft.controlVesselId, glasses: each, offered: 1, path: ["controlVesselId"] }]),
    ...(draft.reference && targetVesselId !== null
      ? [{ vesselId: targetVesselId, glasses: tastersOf(draft), offered: 0, path: ["reference"] }]
      : []),
  ];
}
