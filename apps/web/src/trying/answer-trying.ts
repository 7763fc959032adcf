import {
  type History,
  learnTaste,
  type NextFlight,
  nextFlight,
  type Parts,
  type Taste,
  type WhatIf,
  whatIf,
} from "@partsproof/core/learning";
import { flightAsked, historyAsked, type NextFlightDraft } from "@partsproof/house/protocol";

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

let last: { readonly said: string; readonly taste: Taste } | null = null;

/** What a draft says of a taste: once for the flight, its map and every "what if" after it. */
function learned(asked: NextFlightDraft): { readonly history: History; readonly taste: Taste } {
  const history = historyAsked(asked);
  const said = JSON.stringify(history);
  if (last?.said !== said) last = { said, taste: learnTaste(history) };
  return { history, taste: last.taste };
}

/** The next flight, and what is believed of every mix of the map. */
export function answerTrying({ turn, asked, corners }: Asking, mixes: readonly Parts[]): Answered {
  const { history, taste } = learned(asked);
  const flight = nextFlight(history, flightAsked(asked), taste);
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
  return whatIf(learned(asked).taste, mixes, anchor ?? undefined);
}
