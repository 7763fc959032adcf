import { nextFlight } from "@partsproof/core/learning";
import {
  type BodyRead,
  flightAsked,
  historyAsked,
  lackOf,
  meantGlasses,
  type NextFlightAnswer,
} from "../../protocol/index.ts";
import { revealedEvidence } from "../evidence/index.ts";
import type { Handlers } from "../handler.ts";
import { learnedHere, readPalate } from "../palate/index.ts";
import { observed } from "../profiles/index.ts";
import { knownRecipe, versionOf } from "../recipes/index.ts";
import { refuse } from "../refuse.ts";
import { shelfState } from "../shelf/index.ts";
import { triedHistory } from "./tried-history.ts";

/** What to pour next, without a household: nothing is asked of the house. */
function nextOf(body: BodyRead<"nextFlight">): NextFlightAnswer {
  const next = nextFlight(historyAsked(body), flightAsked(body));
  const { instead = [] } = body;
  const count = next.glasses.length;
  for (const [n, { glass }] of instead.entries())
    if (glass > count)
      refuse(422, {
        code: "glass_unknown",
        path: ["instead", n, "glass"],
        limit: `1 to ${count}, the glasses that are proposed`,
        received: glass,
        message: `instead requires a glass from 1 to ${count}, those that are proposed, got ${glass}`,
      });
  const meant = meantGlasses(next.glasses, instead).map(({ parts }) => parts);
  return {
    glasses: next.glasses.map((glass) => ({ ...glass, parts: { ...glass.parts } })),
    posterior: next.posterior.map((one) => ({ ...one })),
    favourite: next.favourite && { ...next.favourite, parts: { ...next.favourite.parts } },
    stop: { ...next.stop },
    ownShare: next.ownShare,
    scarce: [...next.scarce],
    lacks: lackOf(body, meant).map((lack) => ({ ...lack })),
    counted: { ...next.counted },
  };
}

/** Reads first and reckons after: nobody waits for sums in the middle of a transaction. */
export const triedHandlers: Handlers<"getTried"> = {
  getTried: async ({ house, at, query: { from } }) => {
    const { palate, ...read } = await house.store.transaction(async (records) => {
      const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const version = await versionOf(records, recipe, recipe.latestNumber);
      return {
        recipe,
        body: version?.body ?? { slots: [], waterTo: null, restDays: null, oak: "", note: "" },
        shelf: await shelfState(records, at.household),
        flights: await revealedEvidence(house, records, at.household),
        palate: await readPalate(house, records, at.household),
      };
    });
    const learned = learnedHere(house, read.shelf, palate);
    return triedHistory({ ...read, seen: observed(house, palate.sayings), learned, from });
  },
};

export const learningHandlers: Handlers<"nextFlight"> = {
  nextFlight: async ({ body }) => nextOf(body),
};
