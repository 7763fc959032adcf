import type { Handlers } from "../handler.ts";
import { needRevealed } from "../findings/index.ts";
import { unknownId } from "../refuse.ts";
import { league } from "./league.ts";
import { recipeFinding } from "./recipe-finding.ts";
import { revealedEvidence } from "./revealed-evidence.ts";
import { tasterFinding } from "./taster-finding.ts";
import { weighedFlight } from "./weighed-flight.ts";
import { whiskeyFinding } from "./whiskey-finding.ts";

type Routes =
  | "getWeighedFlight"
  | "getRecipeFinding"
  | "getWhiskeyFinding"
  | "getTasterFinding"
  | "getLeague";

/** Each reads first and reckons after: nobody waits for sums in the middle of a transaction. */
export const evidenceHandlers: Handlers<Routes> = {
  getWeighedFlight: async ({ house, at }) => {
    const id = at["flight"] ?? "";
    const evidence = await house.store.read(async (records) => {
      const flight = (await records.find("flight", at.household, id)) ?? unknownId("flight", id, ["flight"]);
      needRevealed(flight);
      return revealedEvidence(house, records, at.household, id);
    });
    const [flight] = evidence;
    if (flight === undefined) throw new Error(`a revealed flight requires its evidence, ${id} has none`);
    return weighedFlight(house, flight);
  },

  getRecipeFinding: async ({ house, at }) => {
    const id = at["recipe"] ?? "";
    const read = await house.store.read(async (records) => ({
      recipe: (await records.find("recipe", at.household, id)) ?? unknownId("recipe", id, ["recipe"]),
      batches: await records.list("batch", at.household, { where: { recipeId: id } }),
      flights: await revealedEvidence(house, records, at.household),
    }));
    return recipeFinding(house, read.recipe, read.batches, read.flights);
  },

  getWhiskeyFinding: async ({ house, at }) => {
    const id = at["whiskey"] ?? "";
    const read = await house.store.read(async (records) => ({
      whiskey: (await records.find("whiskey", at.household, id)) ?? unknownId("whiskey", id, ["whiskey"]),
      flights: await revealedEvidence(house, records, at.household),
    }));
    return whiskeyFinding(house, read.whiskey, read.flights);
  },

  getTasterFinding: async ({ house, at }) => {
    const id = at["taster"] ?? "";
    const read = await house.store.read(async (records) => ({
      taster: (await records.find("taster", at.household, id)) ?? unknownId("taster", id, ["taster"]),
      flights: await revealedEvidence(house, records, at.household),
    }));
    return tasterFinding(house, read.taster, read.flights);
  },

  getLeague: async ({ house, at }) => {
    const read = await house.store.read(async (records) => {
      const household = await records.find("household", at.household, at.household);
      if (household === null) unknownId("household", at.household, ["household"]);
      return {
        batches: await records.list("batch", at.household),
        recipes: await records.list("recipe", at.household),
        flights: await revealedEvidence(house, records, at.household),
      };
    });
    return league(house, read.flights, read.batches, read.recipes);
  },
};
