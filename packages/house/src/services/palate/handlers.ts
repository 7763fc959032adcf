import type { Asked, Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { Records } from "../ports.ts";
import { unknownId } from "../refuse.ts";
import { shelfState } from "../shelf/index.ts";
import { hangingRecipes } from "./hanging-recipes.ts";
import { learnedHere, readPalate } from "./learned-here.ts";
import { learnedProfile, palateBoard } from "./palate-board.ts";

type Routes = "getPalate" | "getLearnedProfile";

/** Reads first and reckons after: nobody waits for sums in the middle of a transaction. */
export const palateHandlers: Handlers<Routes> = {
  getPalate: async ({ house, at }) => {
    const { shelf, read, names } = await house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const tasters = await records.list("taster", at.household);
      return {
        ...(await readIn(records, { house, at })),
        names: new Map(tasters.map(({ id, name }) => [id, name])),
      };
    });
    return palateBoard(shelf, learnedHere(house, shelf, read), read, names);
  },

  getLearnedProfile: async ({ house, at }) => {
    const id = at["whiskey"] ?? "";
    const { row, shelf, read } = await house.store.transaction(async (records) => ({
      row: (await records.find("whiskey", at.household, id)) ?? unknownId("whiskey", id, ["whiskey"]),
      ...(await readIn(records, { house, at })),
    }));
    return learnedProfile(shelf, row, learnedHere(house, shelf, read), read);
  },
};

async function readIn(records: Records, { house, at }: Pick<Asked<Routes>, "house" | "at">) {
  return {
    shelf: await shelfState(records, at.household),
    read: {
      ...(await readPalate(house, records, at.household)),
      hanging: await hangingRecipes(records, at.household),
    },
  };
}
