import { UNKNOWN } from "@partsproof/core/blending";
import { type FlightWanted, type History, keepsRules } from "@partsproof/core/learning";
import type { NextFlightDraft } from "./next-flight.ts";
import { saidOfTried } from "./said-of-tried.ts";
import { shelfLeft } from "./shelf-left.ts";

type Level = NextFlightDraft["items"][number]["profile"][string];

/** As a search takes it: unknown is the middle of the scale with the spread of an even guess. */
const known = (level: Level): { readonly value: number; readonly sd: number } =>
  level === null ? UNKNOWN : typeof level === "number" ? { value: level, sd: 0 } : level;

/** The history of a draft, as the model takes it. */
export const historyAsked = ({ items, tried, ...said }: NextFlightDraft): History => ({
  whiskeys: items.map(({ id, profile }) => ({
    id,
    profile: Object.fromEntries(
      Object.entries(profile).map(([attribute, level]) => [attribute, known(level)]),
    ),
  })),
  tried,
  ...saidOfTried(said),
});

/** The flight that a draft asks for, as the model takes it. */
export function flightAsked({ glasses, maxParts, seed, ...asked }: NextFlightDraft): FlightWanted {
  const { mixes, ready, target, shelf } = asked;
  return {
    glasses,
    maxParts,
    start: seed,
    keeps: keepsRules(asked),
    ...(mixes === undefined ? {} : { mixes: new Set(mixes) }),
    ...(ready === undefined ? {} : { ready: new Set(ready) }),
    ...(target === undefined ? {} : { target }),
    ...(shelf === undefined ? {} : { shelf: shelfLeft(shelf) }),
  };
}
