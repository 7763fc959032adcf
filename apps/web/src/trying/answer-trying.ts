import { UNKNOWN } from "@partsproof/core/blending";
import {
  type History,
  keepsRules,
  learnTaste,
  type NextFlight,
  nextFlight,
  type Parts,
  type Taste,
  type WhatIf,
  whatIf,
} from "@partsproof/core/learning";
import { type NextFlightDraft, saidOfTried, shelfLeft } from "@partsproof/house/protocol";

export interface Asking {
  readonly turn: number;
  readonly asked: NextFlightDraft;
  /** Corners of the map; null for none. */
  readonly corners: readonly [string, string, string] | null;
}

export interface Answered {
  readonly turn: number;
  readonly flight: NextFlight;
  /** What all else is held against: the anchor, or the middle of all where nothing was tried. */
  readonly anchor: Parts | null;
  /** Of `mapMixes`, in their order. */
  readonly map: readonly WhatIf[];
}

export interface AskingIf {
  readonly turn: number;
  readonly asked: NextFlightDraft;
  readonly anchor: Parts | null;
  readonly mixes: readonly Parts[];
}

const historyOf = ({ items, tried, rankings, scores, target }: NextFlightDraft): History => ({
  whiskeys: items.map(({ id, profile }) => ({
    id,
    profile: Object.fromEntries(
      Object.entries(profile).map(([attribute, level]) => [
        attribute,
        level === null ? UNKNOWN : typeof level === "number" ? { value: level, sd: 0 } : level,
      ]),
    ),
  })),
  tried,
  ...saidOfTried({ rankings, scores, target }),
});

let last: { readonly said: string; readonly taste: Taste } | null = null;

/** What a history says of a taste: once for the flight, its map and every "what if" after it. */
function tasteOf(history: History): Taste {
  const said = JSON.stringify(history);
  if (last?.said !== said) last = { said, taste: learnTaste(history) };
  return last.taste;
}

/** The next flight, and what is believed of every mix of the map. */
export function answerTrying({ turn, asked, corners }: Asking, mixes: readonly Parts[]): Answered {
  const history = historyOf(asked);
  const { mixes: some, ready, target, shelf } = asked;
  const taste = tasteOf(history);
  const wanted = {
    glasses: asked.glasses,
    maxParts: asked.maxParts,
    start: asked.seed,
    keeps: keepsRules(asked),
    ...(some === undefined ? {} : { mixes: new Set(some) }),
    ...(ready === undefined ? {} : { ready: new Set(ready) }),
    ...(target === undefined ? {} : { target }),
    ...(shelf === undefined ? {} : { shelf: shelfLeft(shelf) }),
  };
  const flight = nextFlight(history, wanted, taste);
  const anchor = flight.glasses.find(({ kind }) => kind === "anchor")?.parts ?? null;
  return {
    turn,
    flight,
    anchor,
    map: corners === null ? [] : whatIf(taste, mixes, anchor ?? undefined),
  };
}

/** What is believed of glasses of one's own. */
export function answerIf({ asked, anchor, mixes }: AskingIf): readonly WhatIf[] {
  return whatIf(tasteOf(historyOf(asked)), mixes, anchor ?? undefined);
}
