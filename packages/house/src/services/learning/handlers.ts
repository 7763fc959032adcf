import { nextFlight } from "@partsproof/core/learning";
import { UNKNOWN } from "@partsproof/core/blending";
import type { BodyRead, NextFlightAnswer } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";

type Body = BodyRead<"nextFlight">;
type Level = Body["items"][number]["profile"][string];

/** As a search takes it: unknown is the middle of the scale with the spread of an even guess. */
const known = (level: Level): { readonly value: number; readonly sd: number } =>
  level === null ? UNKNOWN : typeof level === "number" ? { value: level, sd: 0 } : level;

/** What to pour next, without a household: nothing is asked of the house. */
function nextOf({ items, tried, rankings, glasses, maxParts, seed }: Body): NextFlightAnswer {
  const whiskeys = items.map(({ id, profile }) => ({
    id,
    profile: Object.fromEntries(
      Object.entries(profile).map(([attribute, level]) => [attribute, known(level)]),
    ),
  }));
  const next = nextFlight({ whiskeys, tried, rankings }, { glasses, maxParts, start: seed });
  return {
    glasses: next.glasses.map(({ parts, why }) => ({ parts: { ...parts }, why })),
    posterior: next.posterior.map((one) => ({ ...one })),
    stop: { ...next.stop },
  };
}

export const learningHandlers: Handlers<"nextFlight"> = {
  nextFlight: async ({ body }) => nextOf(body),
};
