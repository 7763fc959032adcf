import { type AnswerOf, type BodyOf, routes } from "../../protocol/index.ts";
import { batchHandlers } from "../batches/index.ts";
import { bottleHandlers, transferHandlers, vesselHandlers, whiskeyHandlers } from "../shelf/index.ts";
import { flightHandlers, pouringHandlers, sheetHandlers, undersidesHandlers } from "../flights/index.ts";
import { type Asked, type Handler, HERE } from "../handler.ts";
import { householdHandlers, tasterHandlers } from "../household/index.ts";
import type { House } from "../ports.ts";
import { recipeHandlers } from "../recipes/index.ts";
import { beginHandlers, checkHandlers, oakInHandlers } from "../resting/index.ts";
import { sheetWordHandlers } from "../words/index.ts";
import { HouseRefusal } from "../refuse.ts";
import { revealHandlers } from "../findings/index.ts";
import type { ScriptClock } from "./script-clock.ts";

const handlers = {
  ...householdHandlers,
  ...tasterHandlers,
  ...whiskeyHandlers,
  ...bottleHandlers,
  ...vesselHandlers,
  ...transferHandlers,
  ...recipeHandlers,
  ...batchHandlers,
  ...beginHandlers,
  ...oakInHandlers,
  ...checkHandlers,
  ...flightHandlers,
  ...pouringHandlers,
  ...sheetHandlers,
  ...sheetWordHandlers,
  ...undersidesHandlers,
  ...revealHandlers,
};

/** The routes the diary uses. */
type Act = keyof typeof handlers;
interface With<N extends Act> {
  readonly at?: Readonly<Record<string, string>>;
  readonly body?: BodyOf<N>;
  readonly token?: string | null;
}
export type Ask = <N extends Act>(act: N, given?: With<N>) => Promise<AnswerOf<N>>;

const SECONDS_AN_ACT = 2;

/** Asks the house as a caller would, by the same schemas and handlers, at the clock's time. */
export function asker(house: House, clock: ScriptClock): Ask {
  return async <N extends Act>(act: N, { at, body, token = null }: With<N> = {}) => {
    clock.moveOn(SECONDS_AN_ACT);
    const read = routes[act].body?.safeParse(body);
    if (read?.success === false) throw refused(act, read.error);
    const asked = {
      house,
      at: { household: "", ...at },
      query: undefined,
      body: read?.data,
      token,
      caller: HERE,
    };
    try {
      return await (handlers[act] as unknown as Handler<N>)(asked as unknown as Asked<N>);
    } catch (error) {
      // The caller asked for nothing wrong, so it is not told that they did.
      throw error instanceof HouseRefusal ? refused(act, error) : error;
    }
  };
}

const refused = (act: string, cause: Error): Error =>
  new Error(`the demo requires the house to take its own diary, got ${act} refused: ${cause.message}`, {
    cause,
  });

/** What the diary's keys stand for in this household. */
export interface Known {
  readonly household: string;
  readonly tasters: Map<string, string>;
  readonly whiskeys: Map<string, string>;
  readonly vessels: Map<string, string>;
  readonly batches: Map<string, string>;
  /** By the batch that rests. */
  readonly rests: Map<string, string>;
  readonly recipes: Map<string, string>;
  readonly transfers: Map<string, string>;
  /** Vessel to the name a glass of it is guessed by (F1). */
  readonly names: Map<string, string>;
}

export interface Play {
  readonly ask: Ask;
  readonly clock: ScriptClock;
  readonly known: Known;
}

/** The id behind a key; a key that nothing stands behind is a mistake in the diary. */
export function idOf({ known }: Play, what: Exclude<keyof Known, "household">, key: string): string {
  const id = known[what].get(key);
  if (id === undefined) throw new Error(`the diary requires one of its own ${what}, got ${key}`);
  return id;
}
