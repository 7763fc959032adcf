import type { FlightDesign } from "../../protocol/index.ts";
import { glassesEachOf } from "./draft-question.ts";
import type { Draft } from "./pours.ts";
import { inSets } from "./question.ts";
import { nameOf, type Shelf } from "../shelf/index.ts";

const setsEachOf = ({ question, sets }: Draft): number =>
  inSets(question) ? sets : question === "agree_with_myself" ? 2 : 0;

/** Q7: how the glasses of a draft are laid out. Nothing of it follows from what is in which glass. */
export function designFrom(draft: Draft, shelf: Shelf, said: readonly string[]): FlightDesign {
  const { method, asked, expectedVesselId, controlVesselId, repeats, late, reference } = draft;
  return {
    method,
    asked,
    sides: method === "paired" ? (expectedVesselId === null ? 2 : 1) : null,
    setsEach: setsEachOf(draft),
    glassesEach: glassesEachOf(draft),
    reference: reference || method === "duo_trio",
    repeats,
    controlNameId: controlVesselId === null ? null : nameOf(shelf, controlVesselId).nameId,
    late,
    said: [...said],
  };
}
