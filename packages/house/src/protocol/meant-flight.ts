import { flightLack, type FlightLack, type Parts, sameParts } from "@partsproof/core/learning";
import type { NextFlightAnswer, NextFlightDraft } from "./next-flight.ts";
import { shelfLeft } from "./shelf-left.ts";

type Proposed = Pick<NextFlightAnswer["glasses"][number], "kind" | "why"> & { readonly parts: Parts };

/** A glass that is meant to be poured: as it was proposed, or somebody's own in its place. */
interface MeantGlass extends Proposed {
  /** Its number in the proposal, from 1. */
  readonly glass: number;
  readonly own: boolean;
}

/** The flight as it is meant: what somebody decided otherwise in its place, what they left out gone. */
export function meantGlasses(
  proposed: readonly Proposed[],
  instead: readonly { readonly glass: number; readonly parts: Parts | null }[],
): readonly MeantGlass[] {
  return proposed.flatMap(({ kind, parts, why }, i): MeantGlass[] => {
    const glass = i + 1;
    const other = instead.find((one) => one.glass === glass);
    if (other === undefined) return [{ glass, kind, parts, why, own: false }];
    return other.parts === null
      ? []
      : [{ glass, kind: "new", parts: other.parts, why: "Your own.", own: true }];
  });
}

/** Of which whiskeys a flight asks for more than is left on the shelf of its draft; nothing where no shelf is said. */
export function lackOf(
  { shelf, ready = [], tried }: Pick<NextFlightDraft, "shelf" | "ready" | "tried">,
  glasses: readonly Parts[],
): readonly FlightLack[] {
  if (shelf === undefined) return [];
  const standing = tried.filter(({ id }) => ready.includes(id)).map(({ parts }) => parts);
  standing.push(...(shelf.stands ?? []));
  return flightLack(
    glasses.map((parts) => ({ parts, stands: standing.some((one) => sameParts(one, parts)) })),
    shelfLeft(shelf),
  );
}
